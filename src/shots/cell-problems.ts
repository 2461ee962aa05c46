import type { FigureColumn } from "./figure-column.ts";
import type { TableProblem } from "./shot-table.ts";
import { wouldDo } from "./would-do.ts";

/** A cell that should be a figure and is none. */
export function unreadable(cell: string, column: FigureColumn, row: number): TableProblem {
  const place = `Row ${row}, column ${column.index + 1} (${column.header})`;
  const found = cell.trim();
  return { row, column: column.index + 1, found, message: `${place}: found "${found}"; ${wouldDo(column)}.` };
}

/** A figure whose sign contradicts its side, or a side that is none. */
export function wrongSide(cell: string, side: string, column: FigureColumn, row: number): TableProblem {
  const place = `Row ${row}, column ${column.index + 1} (${column.header})`;
  const found = `${cell.trim()} ${side.trim()}`;
  const message = `${place}: found "${cell.trim()}" beside "${side.trim()}" in column ${column.side + 1}; a number and L or R would do.`;
  return { row, column: column.index + 1, found, message };
}

/** Cells beyond the last heading. */
export function surplusCells(cells: readonly string[], width: number, row: number): TableProblem[] {
  const problems: TableProblem[] = [];
  for (let index = width; index < cells.length; index++) {
    const found = cells[index]!.trim();
    if (found === "") continue;
    const message = `Row ${row}, column ${index + 1}: found "${found}" beyond the last of ${width} headings; a heading over it, or no cell, would do.`;
    problems.push({ row, column: index + 1, found, message });
  }
  return problems;
}
