import { expect, test } from "vitest";
import { testPlan } from "../../src/fitting/test-plan.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { testPlanWorkbook } from "../../src/sheets/test-plan-sheet.ts";
import { answer } from "../club/answer.ts";
import { cellAt, findText } from "./cell-at.ts";
import { heightAt, mergedAt, styleAt, stylesAlong, widthAt } from "./looks-at.ts";
import { rowAt } from "./row-at.ts";

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

test("the plan's sheet is laid out to be printed and written on", () => {
  const { sheets, names } = testPlanWorkbook(plan, NOTHING_TAKEN, "2026-11-25 10:00");
  const sheet = sheets[0]!;
  const { length } = plan.rounds;
  expect(names).toEqual([]);
  expect([cellAt(sheet, 0, 0), cellAt(sheet, 1, 0)]).toEqual(["Test plan", plan.words]);
  expect(
    [0, 1].map((row) => [mergedAt(sheet, row, 0), styleAt(sheet, row, 4), heightAt(sheet, row)]),
  ).toEqual([
    [[1, 5], "title", 28],
    [[1, 5], "sentence", 34],
  ]);
  expect(rowAt(sheet, 3, 0, 6)).toEqual(["Round", "Ball 1", "Ball 2", "Ball 3", "Note", null]);
  expect(stylesAlong(sheet, 3, 6)).toEqual([...Array(5).fill("headingCentre"), undefined]);
  for (const row of [4, 3 + length])
    expect(stylesAlong(sheet, row, 6)).toEqual([...Array(4).fill("plain"), "input", undefined]);
  expect(stylesAlong(sheet, 4 + length, 6)).toEqual(Array(6).fill(undefined));
  expect(cellAt(sheet, 5 + length, 0)).toMatch(/everyone behind the player/);
  expect([
    mergedAt(sheet, 5 + length, 0),
    styleAt(sheet, 5 + length, 0),
    heightAt(sheet, 5 + length),
  ]).toEqual([...[[1, 5], "small", 14]]);
  expect([0, 1, 3, 4, 5].map((column) => widthAt(sheet, column))).toEqual([8, 18, 18, 24, undefined]);
  expect(sheet.frozen).toEqual({ rows: 4, columns: 1 });
  expect(sheet.print).toEqual({
    landscape: true,
    area: { row: 0, column: 0, rows: length + 6, columns: 5 },
    pagesWide: 1,
    pagesTall: 0,
    titleRows: { row: 3, rows: 1 },
    footer: "Planned 2026-11-25 10:00",
  });
});
