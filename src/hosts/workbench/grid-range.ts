import type { Area } from "../../sheets/plan.ts";

/** An area as the grid writes it: first and last row and column. */
export interface GridRange {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}

/** An area of a plan as the grid writes it. */
export function gridRange({ row, column, rows, columns }: Area): GridRange {
  return { startRow: row, startColumn: column, endRow: row + rows - 1, endColumn: column + columns - 1 };
}

/** Back again. */
export function areaOf({ startRow, startColumn, endRow, endColumn }: GridRange): Area {
  return {
    row: startRow,
    column: startColumn,
    rows: endRow - startRow + 1,
    columns: endColumn - startColumn + 1,
  };
}
