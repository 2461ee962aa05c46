import type { Outcome } from "../../outcome/problem.ts";
import type { TableCell, TableCells } from "../../sheets/table-change.ts";
import { runExcel } from "./run-excel.ts";

/** The service hands out 5 MB at once; so many values stay well below. */
const CELLS_AT_ONCE = 100_000;

/** A table's values, of all its columns or only of those named; null where there is no such table. */
export function readTableCells(name: string, only?: readonly string[]): Promise<Outcome<TableCells | null>> {
  return runExcel<TableCells | null>(async (context) => {
    const table = context.workbook.tables.getItemOrNullObject(name);
    const whole = table.getRange();
    const header = table.getHeaderRowRange();
    whole.load("rowCount,columnCount");
    header.load("values");
    await context.sync();
    if (table.isNullObject) return null;
    const headings = header.values[0]!.map(String);
    const rows = Array.from({ length: whole.rowCount - 1 }, () =>
      new Array<TableCell>(headings.length).fill(null),
    );
    for (const [from, width] of runsOf(headings, only)) {
      await readColumns(context, whole, rows, from, width);
    }
    return { headings, rows };
  });
}

/** Neighbouring columns that are asked for, as where they start and how many they are. */
function runsOf(headings: readonly string[], only?: readonly string[]): [number, number][] {
  if (!only) return [[0, headings.length]];
  const wanted = new Set(only.map((heading) => heading.toLowerCase()));
  const runs: [number, number][] = [];
  for (const [place, heading] of headings.entries()) {
    if (!wanted.has(heading.toLowerCase())) continue;
    const last = runs.at(-1);
    if (last && last[0] + last[1] === place) last[1]++;
    else runs.push([place, 1]);
  }
  return runs;
}

async function readColumns(
  context: Excel.RequestContext,
  whole: Excel.Range,
  rows: TableCell[][],
  from: number,
  width: number,
): Promise<void> {
  const most = Math.max(1, Math.floor(CELLS_AT_ONCE / width));
  for (let row = 0; row < rows.length; row += most) {
    const count = Math.min(most, rows.length - row);
    const piece = whole.getCell(row + 1, from).getResizedRange(count - 1, width - 1);
    piece.load("values");
    await context.sync();
    for (const [r, values] of piece.values.entries()) {
      for (const [c, value] of values.entries()) rows[row + r]![from + c] = value === "" ? null : value;
    }
  }
}
