/** What taking a table of the workbook takes, fetched as one. */

export { followTable } from "./follow-table.ts";
export { readTable, readTableNames } from "./read-tables.ts";
