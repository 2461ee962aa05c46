import type { Area, SheetArea } from "./plan.ts";

/** Letters of a column counted from 0: 0 is A, 25 is Z, 26 is AA. */
export function columnName(column: number): string {
  let name = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    name = String.fromCharCode(65 + ((rest - 1) % 26)) + name;
  }
  return name;
}

/** `B3` from row 2, column 1. `$` before what must not move when the formula is copied. */
export function cellName(row: number, column: number, fixed: "" | "row" | "column" | "both" = ""): string {
  const beforeColumn = fixed === "column" || fixed === "both" ? "$" : "";
  const beforeRow = fixed === "row" || fixed === "both" ? "$" : "";
  return `${beforeColumn}${columnName(column)}${beforeRow}${row + 1}`;
}

/** `B3:D10`, or `B3` for a single cell. */
export function areaName(area: Area, fixed: "" | "both" = ""): string {
  const first = cellName(area.row, area.column, fixed);
  if (area.rows === 1 && area.columns === 1) return first;
  return `${first}:${cellName(area.row + area.rows - 1, area.column + area.columns - 1, fixed)}`;
}

/** A sheet's name as formulas write it, always quoted, so that no name can be mistaken for anything else. */
export function sheetName(name: string): string {
  return `'${name.replaceAll("'", "''")}'`;
}

/** `'Shots 2'!$B$3:$B$40` */
export function sheetAreaName(at: SheetArea): string {
  return `${sheetName(at.sheet)}!${areaName(at.area, "both")}`;
}
