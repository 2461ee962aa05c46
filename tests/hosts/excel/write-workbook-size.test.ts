import { describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { officeHost } from "../../office-host/office-host.ts";
import { MOST_BYTES } from "../../office-host/service.ts";
import { cellKey } from "../../office-host/workbook.ts";
import { bigPlan } from "./big-plan.ts";

const bareBytes = (plan: ReturnType<typeof bigPlan>) =>
  JSON.stringify(plan.sheets[0]!.blocks[0]!.cells).length;

describe("a table of shots", { timeout: 60_000 }, () => {
  test.each([
    [12, 3],
    [1_000, 3],
    [20_000, 3],
    [100_000, 4],
  ])("of %i takes %i requests, each within what the service takes", async (shots, expected) => {
    const { requests, workbook } = officeHost();
    const plan = bigPlan(shots);
    expect(await excelHost().write(plan)).toMatchObject({ sheets: ["Shots"] });
    const bytes = requests.reduce((sum, request) => sum + request.bytes, 0);
    console.log(
      `${shots} shots: ${requests.length} requests, ${bytes} bytes, the bare values ${bareBytes(plan)}`,
    );
    expect(requests).toHaveLength(expected);
    expect(Math.max(...requests.map((request) => request.bytes))).toBeLessThan(MOST_BYTES);
    const { cells } = workbook.sheets[1]!;
    expect(cells.size).toBe((shots + 1) * 12);
    const last = plan.sheets[0]!.blocks[0]!.cells[shots]!;
    expect(last.map((_, column) => cells.get(cellKey(shots, column))!.value)).toEqual(last);
  });

  test("suspends calculation in every request that writes", async () => {
    const { requests } = officeHost();
    await excelHost().write(bigPlan(80_000));
    const writing = requests.slice(1, -1);
    expect(writing.length).toBeGreaterThan(1);
    for (const { body } of writing) {
      expect(body.Actions.map(({ Name }) => Name)).toContain("SuspendApiCalculationUntilNextSync");
    }
  });

  test("tells how far it is, up to 1", async () => {
    officeHost();
    const shares: number[] = [];
    await excelHost().write(bigPlan(80_000), { progress: (share) => shares.push(share) });
    expect(shares.length).toBeGreaterThan(1);
    expect(shares.at(-1)).toBe(1);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
  });

  test("stopped half-way leaves the workbook as it was", async () => {
    const { workbook } = officeHost();
    const stop = new AbortController();
    const outcome = await excelHost().write(bigPlan(80_000), {
      progress: () => stop.abort(),
      signal: stop.signal,
    });
    expect(outcome).toEqual({ kind: "unavailable", message: "Stopped. The workbook is as it was." });
    expect(workbook.sheets.map(({ bag }) => bag.Name)).toEqual(["Sheet1"]);
  });
});
