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
    if (name === undefined) return sheetText(context, worksheets.getActiveWorksheet());
    return tableText(context, tables.getItemOrNullObject(name), name);
  });
}

/** A table, which may be gone, as text; `name` is what it was called. */
export async function tableText(
  context: Excel.RequestContext,
  table: Excel.Table,
  name: string,
): Promise<Outcome<string>> {
  const range = table.getRange();
  range.load("rowCount,columnCount");
  await context.sync();
  if (table.isNullObject) return unavailable(`There is no table "${name}" any more; choose another.`);
  return readRows(context, range);
}

/** What is used of a sheet, which may be gone, as text. */
export async function sheetText(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
): Promise<Outcome<string>> {
  const range = sheet.getRange().getUsedRangeOrNullObject(true);
  range.load("rowCount,columnCount");
  await context.sync();
  if (sheet.isNullObject) return unavailable("The sheet is not there any more; choose another.");
  if (range.isNullObject) return unavailable("The sheet in front is empty. Go to the one with the shots.");
  return readRows(context, range);
}
