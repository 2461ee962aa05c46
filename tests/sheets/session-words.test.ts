import { expect, test } from "vitest";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import type { CellValue } from "../../src/sheets/plan.ts";
import { demoSession } from "./demo-session.ts";

const cellsOf = (decimalMark?: string): CellValue[] =>
  comparisonWorkbook(
    { ...demoSession(), ...(decimalMark ? { decimalMark } : {}) },
    NOTHING_TAKEN,
    "2026-11-25 10:00",
  ).sheets.flatMap(({ blocks }) => blocks.flatMap(({ cells }) => cells.flat()));

test("sentences on the sheets of a session take the decimal mark of the place; figures and formulas stay", () => {
  const [point, comma] = [cellsOf(), cellsOf(",")];
  expect(comma.length).toBe(point.length);
  const changed = point.flatMap((cell, i) => (comma[i] === cell ? [] : ([[cell, comma[i]]] as const)));
  const said = changed.filter(([was, is]) => JSON.stringify(was) !== JSON.stringify(is));
  expect(said.length).toBeGreaterThan(5);
  for (const [was, is] of said) {
    expect(typeof was).toBe("string");
    expect(is).toBe(String(was).replace(/(\d)\.(?=\d)/g, "$1,"));
  }
  const sentences = comma.filter((cell) => typeof cell === "string" && cell.split(" ").length > 5);
  expect(sentences.filter((sentence) => /\d\.\d/.test(String(sentence)))).toEqual([]);
});
