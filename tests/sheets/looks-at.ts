import type { Area, SheetPlan, StyleName } from "../../src/sheets/plan.ts";

const holds = ({ row, column, rows, columns }: Area, r: number, c: number) =>
  r >= row && r < row + rows && c >= column && c < column + columns;

/** The look that a cell ends up with; undefined where none was painted. */
export const styleAt = ({ styles }: SheetPlan, row: number, column: number): StyleName | undefined =>
  styles.findLast(({ area }) => holds(area, row, column))?.style;

/** The number format that a cell ends up with. */
export const formatAt = ({ formats }: SheetPlan, row: number, column: number): string | undefined =>
  formats.findLast(({ area }) => holds(area, row, column))?.format;

/** Points of a row, where any were asked for. */
export const heightAt = ({ heights }: SheetPlan, row: number): number | undefined =>
  heights.findLast((one) => row >= one.row && row < one.row + one.rows)?.points;

/** Characters that a column ends up with. */
export const widthAt = ({ widths }: SheetPlan, column: number): number | undefined =>
  widths.findLast((one) => column >= one.column && column < one.column + one.columns)?.characters;

/** Cells across and down that a cell was merged with, itself included; 1 by 1 where it was not. */
export function mergedAt(
  { merges }: SheetPlan,
  row: number,
  column: number,
): [rows: number, columns: number] {
  const found = merges.find((area) => holds(area, row, column));
  return found ? [found.rows, found.columns] : [1, 1];
}

/** The looks of a row from its first column on. */
export const stylesAlong = (sheet: SheetPlan, row: number, columns: number) =>
  Array.from({ length: columns }, (_, c) => styleAt(sheet, row, c));

/** The number formats of a row from its first column on. */
export const formatsAlong = (sheet: SheetPlan, row: number, columns: number) =>
  Array.from({ length: columns }, (_, c) => formatAt(sheet, row, c));
