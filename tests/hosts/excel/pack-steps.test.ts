import { describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { MOST_BYTES, packSteps } from "../../../src/hosts/excel/pack-steps.ts";
import { planSteps } from "../../../src/hosts/excel/plan-steps.ts";
import { sheetMarks } from "../../../src/hosts/excel/sheet-marks.ts";
import type { Step } from "../../../src/hosts/excel/step.ts";
import type { WorkbookPlan } from "../../../src/sheets/plan.ts";
import { officeHost } from "../../office-host/office-host.ts";
import { samplePlan } from "../../sheets/sample-plan.ts";
import { bigPlan } from "./big-plan.ts";

const step = (bytes: number): Step => ({ bytes, queue: () => {} });
const sizes = (requests: readonly (readonly Step[])[]) =>
  requests.map((one) => one.map(({ bytes }) => bytes));

describe("packing steps into requests", () => {
  test("keeps their order and fills a request before the next begins", () => {
    expect(sizes(packSteps([step(4), step(5), step(2), step(9), step(1)], 10))).toEqual([
      [4, 5],
      [2],
      [9, 1],
    ]);
  });

  test("gives a step that is too large a request of its own, for it cannot be divided", () => {
    expect(sizes(packSteps([step(3), step(12), step(3)], 10))).toEqual([[3], [12], [3]]);
  });

  test("makes no request of nothing", () => {
    expect(packSteps([])).toEqual([]);
  });
});

describe("a workbook just below where requests are split", { timeout: 60_000 }, () => {
  const counted = (shots: number) => {
    const plan = bigPlan(shots);
    return planSteps(plan, sheetMarks(plan)).steps.reduce((sum, { bytes }) => sum + bytes, 0);
  };

  test("is written in three requests, and one a little larger in four", async () => {
    officeHost();
    const [few, many] = [counted(10_000), counted(20_000)];
    const shots = Math.floor(10_000 + ((MOST_BYTES - few) * 10_000) / (many - few)) - 150;
    expect(counted(shots) / MOST_BYTES).toBeCloseTo(1, 2);
    expect(counted(shots)).toBeLessThan(MOST_BYTES);
    const trips = async (rows: number) => {
      const { requests } = officeHost();
      await excelHost().write(bigPlan(rows));
      return requests;
    };
    const below = await trips(shots);
    expect(below).toHaveLength(3);
    // The counting is generous by no more than a few hundredths.
    expect(below[1]!.bytes).toBeGreaterThan(0.96 * MOST_BYTES);
    expect(await trips(shots + 300)).toHaveLength(4);
  });
});

describe("the bytes that steps count", () => {
  test.each<[string, WorkbookPlan]>([
    ["a workbook of many looks", samplePlan()],
    ["a workbook of many figures", bigPlan(5_000)],
  ])("are no fewer than those sent for %s, and less than half as many more", async (_, plan) => {
    const { requests } = officeHost();
    const { steps } = planSteps(plan, sheetMarks(plan));
    await excelHost().write(plan);
    const counted = steps.reduce((sum, { bytes }) => sum + bytes, 0);
    const sent = requests[1]!.bytes;
    expect(counted).toBeGreaterThan(sent);
    expect(counted).toBeLessThan(1.5 * sent);
  });
});
