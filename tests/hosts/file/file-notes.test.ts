import { describe, expect, test } from "vitest";
import { fileNotes } from "../../../src/hosts/file/file-notes.ts";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx.ts";
import { contentsOfPlan } from "../../contents-of-plan.ts";
import { planOfCells } from "../../sheets/plan-of-cells.ts";
import { samplePlan } from "../../sheets/sample-plan.ts";
import { contentsOfXlsx } from "./contents-of-xlsx.ts";

function list(...choices: string[]) {
  const area = { row: 1, column: 1, rows: 1, columns: 1 };
  return planOfCells([], { validations: [{ kind: "list", area, choices, message: "Pick one." }] });
}

describe("fileNotes", () => {
  test("says nothing of a plan that a file shows whole", () => {
    expect(fileNotes(samplePlan())).toEqual([]);
    expect(fileNotes(list("x".repeat(255)))).toEqual([]);
  });

  test.each([
    ["a choice with a comma", list("65 g, stiff", "75 g")],
    ["choices of more than 255 characters", list("x".repeat(128), "y".repeat(127))],
    ["no choices", list()],
  ])("names the cell that takes any text because of %s, and the file has no rule for it", async (_, plan) => {
    expect(fileNotes(plan)).toEqual([expect.stringMatching(/^B2 of "Cells" takes any text/)]);
    const { sheets } = await contentsOfXlsx((await writeXlsx(plan)) as Uint8Array);
    expect(sheets[0]!.validations).toEqual([]);
  });

  test("says nothing of quotes in choices, which a file can hold", async () => {
    const plan = list('5/8" hosel', "plain & <simple>");
    expect(fileNotes(plan)).toEqual([]);
    expect(await contentsOfXlsx((await writeXlsx(plan)) as Uint8Array)).toEqual(contentsOfPlan(plan));
  });
});
