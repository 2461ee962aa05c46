import { cellName } from "../../src/sheets/a1.ts";
import type { Area } from "../../src/sheets/plan.ts";
import { enteredCell } from "./entered-cell.ts";
import { checkFormula } from "./formula-check.ts";
import { invalidArgument, ServiceError } from "./service-error.ts";
import { cellKey, type HeldSheet, type HeldWorkbook } from "./workbook.ts";

const LONGEST_TEXT = 32_767;
const LONGEST_FORMULA = 8_192;

/**
 * Enters values or formulas into an area: an array of its size, or one entry for all its cells. `placed` gives a formula
 * that is written otherwise as the cell holds it.
 */
export function enterCells(
  workbook: HeldWorkbook,
  sheet: HeldSheet,
  area: Area,
  given: unknown,
  placed = (formula: string, _row: number, _column: number) => formula,
): void {
  eachCell(area, given, (row, column, entry) => {
    const isFormula = typeof entry === "string" && entry.startsWith("=");
    put(workbook, sheet, row, column, isFormula ? placed(entry, row, column) : entry);
  });
  noteChange(workbook, sheet, area);
}

/** Remembers a change of which someone wants to hear. */
export function noteChange(workbook: HeldWorkbook, sheet: HeldSheet, area: Area): void {
  if (workbook.watched.has(sheet.id)) workbook.changes.push({ sheet: sheet.id, area });
}

/** Visits the cells of an area with what an array, or one entry for all, gives each of them. */
export function eachCell(
  area: Area,
  given: unknown,
  put: (row: number, column: number, entry: unknown) => void,
) {
  const rows = Array.isArray(given) ? (given as unknown[][]) : null;
  if (rows && (rows.length !== area.rows || rows.some((row) => row.length !== area.columns))) {
    throw wrongSize();
  }
  for (let r = 0; r < area.rows; r++) {
    for (let c = 0; c < area.columns; c++) put(area.row + r, area.column + c, rows ? rows[r]![c] : given);
  }
}

function put(workbook: HeldWorkbook, sheet: HeldSheet, row: number, column: number, entry: unknown) {
  const entered = enteredCell(entry);
  if (entered === undefined) return;
  if (entered === null) sheet.cells.delete(cellKey(row, column));
  else {
    if ((entered.formula?.length ?? 0) > LONGEST_FORMULA)
      throw invalidArgument(`formula too long at ${cellName(row, column)}`);
    if (entered.formula) checkFormula(workbook, entered.formula);
    if (typeof entered.value === "string" && entered.value.length > LONGEST_TEXT) {
      throw invalidArgument(`text too long at ${cellName(row, column)}`);
    }
    sheet.cells.set(cellKey(row, column), entered);
  }
}

export const wrongSize = () =>
  new ServiceError(
    "InvalidArgument",
    "The number of rows or columns in the input array doesn't match the size or dimensions of the range.",
  );
