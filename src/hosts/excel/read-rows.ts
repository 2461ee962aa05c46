import { cellText } from "../cell-text.ts";
import { CELLS_AT_ONCE } from "./cells-at-once.ts";

/** All rows of a range whose size is loaded as tab-separated text, in as many requests as they need. */
export async function readRows(context: Excel.RequestContext, range: Excel.Range): Promise<string> {
  const { rowCount, columnCount } = range;
  const most = Math.max(1, Math.floor(CELLS_AT_ONCE / columnCount));
  const pieces: string[] = [];
  for (let row = 0; row < rowCount; row += most) {
    const rows = Math.min(most, rowCount - row);
    const piece = range.getCell(row, 0).getResizedRange(rows - 1, columnCount - 1);
    piece.load("values,numberFormat");
    await context.sync();
    pieces.push(tabSeparated(piece.values, piece.numberFormat));
  }
  return pieces.join("\n");
}

/** Rows of values as text that the reader takes apart again. */
function tabSeparated(values: readonly unknown[][], formats: readonly unknown[][]): string {
  return values
    .map((row, r) => row.map((value, c) => quoted(cellText(value, String(formats[r]?.[c] ?? "")))).join("\t"))
    .join("\n");
}

/** Quoted where a tab, a line break or a quote would be taken for the end of the cell. */
function quoted(text: string): string {
  return /[\t\n\r"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
