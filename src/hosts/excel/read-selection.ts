import { type Outcome, unavailable } from "../../outcome/problem.ts";
import { cellText } from "./cell-text.ts";
import { runExcel } from "./run-excel.ts";

/**
 * The selected table as tab-separated text. Of several areas the first counts; whole columns may be selected, for
 * only what is used in them is read. A single cell stands for the table around it, and in an empty place for all
 * that is used on its sheet. Figures come in full, not as they are shown.
 */
export function readSelection(): Promise<Outcome<string>> {
  return runExcel(async (context) => {
    const first = context.workbook.getSelectedRanges().areas.getItemAt(0);
    first.load("cellCount");
    await context.sync();
    const places =
      first.cellCount === 1 ? [first.getSurroundingRegion(), first.worksheet.getRange()] : [first];
    for (const place of places) {
      const used = place.getUsedRangeOrNullObject(true);
      used.load("values,numberFormat");
      await context.sync();
      if (!used.isNullObject) return tabSeparated(used.values, used.numberFormat);
    }
    return unavailable("The selected cells are empty. Select the table with its headings and try again.");
  });
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
