import type { Area, StyledArea } from "../../sheets/plan.ts";

/**
 * The same looks with nothing painted twice: what a later area covers is cut out of the earlier ones. A look then
 * needs to say only how it differs from an empty cell, and no border of a neighbour has to be wiped.
 */
export function visibleParts(styles: readonly StyledArea[]): StyledArea[] {
  let parts: StyledArea[] = [];
  for (const painted of styles) {
    parts = parts.flatMap(({ area, style }) =>
      without(area, painted.area).map((rest) => ({ area: rest, style })),
    );
    parts.push(painted);
  }
  return parts;
}

/** What is left of `area` outside `hole`: bands above and below, and pieces on both sides. */
function without(area: Area, hole: Area): Area[] {
  const top = Math.max(area.row, hole.row);
  const bottom = Math.min(area.row + area.rows, hole.row + hole.rows);
  const left = Math.max(area.column, hole.column);
  const right = Math.min(area.column + area.columns, hole.column + hole.columns);
  if (top >= bottom || left >= right) return [area];
  const band = (row: number, end: number, column: number, edge: number): Area => ({
    row,
    column,
    rows: end - row,
    columns: edge - column,
  });
  return [
    band(area.row, top, area.column, area.column + area.columns),
    band(top, bottom, area.column, left),
    band(top, bottom, right, area.column + area.columns),
    band(bottom, area.row + area.rows, area.column, area.column + area.columns),
  ].filter(({ rows, columns }) => rows > 0 && columns > 0);
}
