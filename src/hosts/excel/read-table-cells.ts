import type { Outcome } from "../../outcome/problem.ts";
import { headingKey } from "../../sheets/heading-key.ts";
import type { RowsSought, TableCell, TableCells } from "../../sheets/table-change.ts";
import { CELLS_AT_ONCE } from "./cells-at-once.ts";
import { findRows } from "./find-rows.ts";
import { runExcel } from "./run-excel.ts";
import { runsOf } from "./runs-of.ts";

/** A table's values, of all its columns and rows or only of those asked for; null where there is no such table. */
export function readTableCells(
  name: string,
  only?: readonly string[],
  sought?: RowsSought,
): Promise<Outcome<TableCells | null>> {
  return runExcel<TableCells | null>(async (context) => {
    const table = context.workbook.tables.getItemOrNullObject(name);
    const whole = table.getRange();
    const header = table.getHeaderRowRange();
    whole.load("rowCount,columnCount");
    header.load("values");
    await context.sync();
    if (table.isNullObject) return null;
    const headings = header.values[0]!.map(String);
    const count = whole.rowCount - 1;
    const blank = () => new Array<TableCell>(headings.length).fill(null);
    const columns = columnRuns(headings, only);
    if (!sought) {
      const rows = Array.from({ length: count }, blank);
      await readPieces(context, whole, rows, [[0, count]], columns);
      return { headings, rows };
    }
    const rows = new Array<TableCell[]>(count).fill([]);
    const places = await findRows(context, whole, headings, sought);
    for (const place of places) rows[place] = blank();
    await readPieces(context, whole, rows, runsOf(places), columns);
    return { headings, rows };
  });
}

/** Columns that are asked for, as runs. */
function columnRuns(headings: readonly string[], only?: readonly string[]): [number, number][] {
  if (!only) return [[0, headings.length]];
  const wanted = new Set(only.map(headingKey));
  return runsOf([...headings.keys()].filter((place) => wanted.has(headingKey(headings[place]!))));
}

/** Reads runs of rows in runs of columns, in as many requests as the size of an answer asks for. */
async function readPieces(
  context: Excel.RequestContext,
  whole: Excel.Range,
  rows: TableCell[][],
  downwards: readonly [number, number][],
  across: readonly [number, number][],
): Promise<void> {
  let waiting: { row: number; column: number; range: Excel.Range }[] = [];
  let cells = 0;
  const fetch = async () => {
    await context.sync();
    for (const { row, column, range } of waiting) {
      for (const [r, values] of range.values.entries())
        for (const [c, value] of values.entries()) rows[row + r]![column + c] = value === "" ? null : value;
    }
    waiting = [];
    cells = 0;
  };
  for (const [column, width] of across) {
    const most = Math.max(1, Math.floor(CELLS_AT_ONCE / width));
    for (const [start, length] of downwards) {
      for (let row = start; row < start + length; row += most) {
        const count = Math.min(most, start + length - row);
        if (cells > 0 && cells + count * width > CELLS_AT_ONCE) await fetch();
        const range = whole.getCell(row + 1, column).getResizedRange(count - 1, width - 1);
        range.load("values");
        waiting.push({ row, column, range });
        cells += count * width;
      }
    }
  }
  if (waiting.length > 0) await fetch();
}
