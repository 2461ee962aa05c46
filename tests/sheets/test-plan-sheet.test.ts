import { expect, test } from "vitest";
import { testPlan } from "../../src/fitting/test-plan.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { testPlanWorkbook } from "../../src/sheets/test-plan-sheet.ts";
import { answer } from "../club/answer.ts";
import { cellAt, findText } from "./cell-at.ts";

const plan = answer(testPlan(["A", "B", "C"], 6));

test("the plan of a test has a row a round, its builds from left to right, and room for a note", () => {
  const sheet = testPlanWorkbook(plan, NOTHING_TAKEN, "2026-11-25 10:00").sheets[0]!;
  const { row, column } = findText(sheet, "Round");
  plan.rounds.forEach((round, i) => {
    expect(cellAt(sheet, row + 1 + i, column)).toBe(i + 1);
    expect([1, 2, 3].map((ball) => cellAt(sheet, row + 1 + i, column + ball))).toEqual(round);
    expect(cellAt(sheet, row + 1 + i, column + 4)).toBeNull();
  });
  expect(sheet.print).toMatchObject({ landscape: true, pagesWide: 1 });
});

test("the plan's sheet takes a name that is free", () => {
  const { sheets, active } = testPlanWorkbook(plan, { sheets: ["test plan"], names: [] }, "");
  expect([sheets[0]!.name, active]).toEqual(["Test plan 2", "Test plan 2"]);
});
