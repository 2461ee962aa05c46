import { type Outcome, unavailable } from "../../outcome/problem.ts";
import { cellText } from "./cell-text.ts";
import { runExcel } from "./run-excel.ts";

/** The service hands out 5 MB at once; so many values with their formats stay well below. */
const CELLS_AT_ONCE = 100_000;

/**
 * The selected table as tab-separated text. Of several areas the first counts; whole columns may be selected, for
 * only what is used in them is read. A single cell stands for the table around it, and in an empty place for all
 * that is used on its sheet. Figures come in full, not as they are shown.
 */
export function readSelection(): Promise<Outcome<string>> {
  return runExcel(async (context) => {
    const first = context.workbook.getSelectedRanges().areas.getItemAt(0);
    const places = [first, first.getSurroundingRegion(), first.worksheet.getRange()];
    const used = places.map((place) => place.getUsedRangeOrNullObject(true));
    first.load("cellCount");
    for (const range of used) range.load("rowCount,columnCount");
    await context.sync();
    const table = (first.cellCount === 1 ? used.slice(1) : used.slice(0, 1)).find(
      (range) => !range.isNullObject,
    );
    return table
      ? await readRows(context, table)
      : unavailable("The selected cells are empty. Select the table with its headings and try again.");
  });
}

/** All rows of a range whose size is loaded, in as many requests as they need. */
async function readRows(context: Excel.RequestContext, table: Excel.Range): Promise<string> {
  const { rowCount, columnCount } = table;
  const most = Math.max(1, Math.floor(CELLS_AT_ONCE / columnCount));
  const pieces: string[] = [];
  for (let row = 0; row < rowCount; row += most) {
    const rows = Math.min(most, rowCount - row);
    const piece = table.getCell(row, 0).getResizedRange(rows - 1, columnCount - 1);
    piece.load("values,numberFormat");
    await context.sync();
    pieces.push(tabSeparated(piece.values, piece.numberFormat));
  }
  return pieces.join("\n");
}

/** Rows of values as text that the reader takes apart again. */
export function tabSeparated(values: readonly unknown[][], formats: readonly unknown[][]): string {
  return values
    .map((row, r) => row.map((value, c) => quoted(cellText(value, String(formats[r]?.[c] ?? "")))).join("\t"))
    .join("\n");
}

/** Quoted where a tab, a line break or a quote would be taken for the end of the cell. */
function quoted(text: string): string {
  return /[\t\n\r"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
