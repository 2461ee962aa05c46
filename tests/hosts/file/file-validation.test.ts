import { describe, expect, test } from "vitest";
import { fitsInFile } from "../../../src/hosts/file/file-validation.ts";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx.ts";
import type { WorkbookPlan } from "../../../src/sheets/plan.ts";
import { contentsOfPlan } from "../../contents-of-plan.ts";
import { planOfCells } from "../../sheets/plan-of-cells.ts";
import { samplePlan } from "../../sheets/sample-plan.ts";
import { contentsOfXlsx } from "./contents-of-xlsx.ts";

function list(...choices: string[]) {
  const area = { row: 1, column: 1, rows: 1, columns: 1 };
  return planOfCells([], { validations: [{ kind: "list", area, choices, message: "Pick one." }] });
}

const fits = (plan: WorkbookPlan) => plan.sheets.flatMap(({ validations }) => validations).every(fitsInFile);

describe("fitsInFile(validation)", () => {
  test("takes every rule of the sample plan, and choices of up to 255 characters", () => {
    expect(fits(samplePlan())).toBe(true);
    expect(fits(list("x".repeat(255)))).toBe(true);
  });

  test.each([
    ["a choice with a comma", list("65 g, stiff", "75 g")],
    ["choices of more than 255 characters", list("x".repeat(128), "y".repeat(127))],
    ["no choices", list()],
  ])("refuses %s, and the file then has no rule rather than a broken one", async (_, plan) => {
    expect(fits(plan)).toBe(false);
    const { sheets } = await contentsOfXlsx((await writeXlsx(plan)) as Uint8Array);
    expect(sheets[0]!.validations).toEqual([]);
  });

  test("takes quotes in choices, which a file can hold", async () => {
    const plan = list('5/8" hosel', "plain & <simple>");
    expect(fits(plan)).toBe(true);
    expect(await contentsOfXlsx((await writeXlsx(plan)) as Uint8Array)).toEqual(contentsOfPlan(plan));
  });
});
