import { type Outcome, unavailable } from "../../outcome/problem.ts";
import { readRows } from "./read-rows.ts";
import { runExcel } from "./run-excel.ts";

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
