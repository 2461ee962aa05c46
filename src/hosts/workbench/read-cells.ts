import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/preset-sheets-core";
import type { Area } from "../../sheets/plan.ts";
import type { Sheet } from "./grid.ts";
import { areaOf, type GridRange, gridRange } from "./grid-range.ts";

/** What a cell holds, full precision; null where it is empty. Errors are their names: "#N/A". */
export type ReadCell = string | number | boolean | null;

/** Cells of an area. What an array formula spills over is in none of the grid's own answers; it is put in here. */
export function readCells(sheet: Sheet, area: Area): ReadCell[][] {
  const spilled = spills(sheet);
  return sheet
    .getRange(gridRange(area))
    .getCellDatas()
    .map((line, i) =>
      line.map((cell, j) => readCell(cell) ?? readCell(spilled?.[area.row + i]?.[area.column + j])),
    );
}

/** The rectangle from A1 to the last cell with anything in it. */
export function usedArea(sheet: Sheet): Area {
  const rows = Object.keys(spills(sheet) ?? {}).map(Number);
  const columns = Object.values(spills(sheet) ?? {}).flatMap((row) => Object.keys(row).map(Number));
  return {
    row: 0,
    column: 0,
    rows: Math.max(sheet.getLastRow(), ...rows, 0) + 1,
    columns: Math.max(sheet.getLastColumn(), ...columns, 0) + 1,
  };
}

/** Cells that array formulas spill over, their own cell included. */
export function spills(sheet: Sheet): Record<number, Record<number, ICellData>> | undefined {
  const all = sheet.getInject().get(FormulaDataModel).getArrayFormulaCellData();
  const found = all[sheet.getWorkbook().getUnitId()]?.[sheet.getSheetId()];
  return (found ?? undefined) as Record<number, Record<number, ICellData>> | undefined;
}

/** The cells that an array formula fills, by the place of the formula; those of a single cell are left out. */
export function spillAreas(sheet: Sheet): Map<string, Area> {
  const all = sheet.getInject().get(FormulaDataModel).getArrayFormulaRange();
  const found = all[sheet.getWorkbook().getUnitId()]?.[sheet.getSheetId()] ?? {};
  const areas = Object.values(found as Record<number, Record<number, GridRange>>).flatMap((row) =>
    Object.values(row ?? {}).map((range) => areaOf(range)),
  );
  return new Map(
    areas
      .filter(({ rows, columns }) => rows > 1 || columns > 1)
      .map((area) => [`${area.row},${area.column}`, area]),
  );
}

/** What one cell holds. */
export function readCell(cell: Nullable<ICellData>): ReadCell {
  const text = cell?.p?.body?.dataStream?.replace(/\r\n$/, "");
  const value = cell?.v ?? text;
  if (!cell || value === undefined || value === null || value === "") return null;
  if (cell.t === CellValueType.BOOLEAN)
    return value === true || value === 1 || /^(1|true)$/i.test(String(value));
  if (cell.t === CellValueType.NUMBER) return Number(value);
  return value;
}
