import { type Outcome, unavailable } from "../../outcome/problem.ts";
import { readRows } from "./read-rows.ts";
import { runExcel } from "./run-excel.ts";

/** Names of the workbook's tables, those on the sheet in front first. */
export function readTableNames(): Promise<Outcome<readonly string[]>> {
  return runExcel<readonly string[]>(async (context) => {
    const { tables, worksheets } = context.workbook;
    const here = worksheets.getActiveWorksheet().tables;
    tables.load("items/name");
    here.load("items/name");
    await context.sync();
    return [...new Set([...here.items, ...tables.items].map(({ name }) => name))];
  });
}

/** A table with its headings, or all that is used on the sheet in front, as tab-separated text. */
export function readTable(name?: string): Promise<Outcome<string>> {
  return runExcel<string>(async (context) => {
    const { tables, worksheets } = context.workbook;
    const table = name === undefined ? null : tables.getItemOrNullObject(name);
    const range = table
      ? table.getRange()
      : worksheets.getActiveWorksheet().getRange().getUsedRangeOrNullObject(true);
    range.load("rowCount,columnCount");
    await context.sync();
    if (table?.isNullObject) return unavailable(`There is no table "${name}" any more; choose another.`);
    if (range.isNullObject) return unavailable("The sheet in front is empty. Go to the one with the shots.");
    return readRows(context, range);
  });
}
