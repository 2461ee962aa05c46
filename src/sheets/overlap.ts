import type { Area } from "./plan.ts";

/** Whether two areas have a cell in common. */
export function overlap(a: Area, b: Area): boolean {
  return (
    a.row < b.row + b.rows &&
    b.row < a.row + a.rows &&
    a.column < b.column + b.columns &&
    b.column < a.column + a.columns
  );
}
