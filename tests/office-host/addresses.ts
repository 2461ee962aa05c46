import type { Area } from "../../src/sheets/plan.ts";
import { invalidArgument } from "./service-error.ts";

export const ROWS = 1_048_576;
export const COLUMNS = 16_384;

/** Takes the sheet off an address: `'Shots 2'!B3` is the sheet "Shots 2" and the cell B3. */
export function splitAddress(address: string): { sheet?: string; cells: string } {
  const mark = address.lastIndexOf("!");
  if (mark < 0) return { cells: address };
  const name = address.slice(0, mark);
  const sheet = name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name;
  return { sheet, cells: address.slice(mark + 1) };
}

/** The area of `B3`, `$B$3:D10`, `B:D` or `2:5`. */
export function parseCells(cells: string): Area {
  const ends = cells.replaceAll("$", "").split(":");
  const match = ends.map((end) => /^([A-Za-z]{1,3})?([1-9]\d{0,6})?$/.exec(end));
  const [first, last = first] = match;
  const whole = ends.length === 1 && (!first?.[1] || !first[2]);
  if (ends.length > 2 || !first || !last || whole || ends.includes("")) throw invalidArgument(cells);
  const columns = [columnIndex(first[1], 0), columnIndex(last[1], COLUMNS - 1)].sort((a, b) => a - b);
  const rows = [rowIndex(first[2], 0), rowIndex(last[2], ROWS - 1)].sort((a, b) => a - b);
  return checked({
    row: rows[0]!,
    column: columns[0]!,
    rows: rows[1]! - rows[0]! + 1,
    columns: columns[1]! - columns[0]! + 1,
  });
}

/** The area itself if the sheet has such cells. */
export function checked(area: Area): Area {
  const inside =
    area.row >= 0 &&
    area.column >= 0 &&
    area.rows > 0 &&
    area.columns > 0 &&
    area.row + area.rows <= ROWS &&
    area.column + area.columns <= COLUMNS;
  if (!inside) throw invalidArgument(JSON.stringify(area));
  return area;
}

export function overlap(a: Area, b: Area): Area | undefined {
  const row = Math.max(a.row, b.row);
  const column = Math.max(a.column, b.column);
  const rows = Math.min(a.row + a.rows, b.row + b.rows) - row;
  const columns = Math.min(a.column + a.columns, b.column + b.columns) - column;
  return rows > 0 && columns > 0 ? { row, column, rows, columns } : undefined;
}

export const covers = (outer: Area, inner: Area) => {
  const common = overlap(outer, inner);
  return common !== undefined && common.rows === inner.rows && common.columns === inner.columns;
};

function columnIndex(letters: string | undefined, otherwise: number): number {
  if (!letters) return otherwise;
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function rowIndex(digits: string | undefined, otherwise: number): number {
  return digits ? Number(digits) - 1 : otherwise;
}
