import { linesOf } from "./lines-of.ts";

/**
 * Whether a session still holds the table that it follows: under its headings, with a row of it left. It does not once
 * it was started over, or another table was put in its place.
 */
export function isStillOf(text: string, table: string): boolean {
  const [lines, held] = [linesOf(text), linesOf(table)];
  if (lines[0] !== held[0]) return false;
  const rows = new Set(lines.slice(1));
  // A single row may well have been put right in the pane.
  return held.length <= 2 || held.slice(1).some((row) => rows.has(row));
}
