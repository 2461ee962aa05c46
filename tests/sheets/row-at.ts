import type { CellValue, SheetPlan } from "../../src/sheets/plan.ts";
import { cellAt } from "./cell-at.ts";

/** What a plan puts into some cells of a row. */
export const rowAt = (sheet: SheetPlan, row: number, column: number, columns: number): CellValue[] =>
  Array.from({ length: columns }, (_, i) => cellAt(sheet, row, column + i));

/** The formula in a cell; a test fails where there is none. */
export function formulaAt(sheet: SheetPlan, row: number, column: number): string {
  const cell = cellAt(sheet, row, column);
  if (typeof cell !== "object" || cell === null) throw new Error(`no formula but ${cell}`);
  return cell.formula;
}

/** What a cell shows: a formula's answer, or the value itself. */
export function shownAt(sheet: SheetPlan, row: number, column: number): string | number | boolean | null {
  const cell = cellAt(sheet, row, column);
  return typeof cell === "object" && cell !== null ? cell.value : cell;
}
