import { type Outcome, unavailable } from "../../outcome/problem.ts";
import { cellText } from "./cell-text.ts";
import { runExcel } from "./run-excel.ts";

/**
 * The used cells of the first selected area as tab-separated text. Figures come in full, not as they are shown;
 * whole columns may be selected, for only what is used in them is read.
 */
export function readSelection(): Promise<Outcome<string>> {
  return runExcel(async (context) => {
    const first = context.workbook.getSelectedRanges().areas.getItemAt(0);
    const used = first.getUsedRangeOrNullObject(true);
    used.load("values,numberFormat");
    await context.sync();
    if (used.isNullObject) {
      return unavailable("The selected cells are empty. Select the table with its headings and try again.");
    }
    return tabSeparated(used.values, used.numberFormat);
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
