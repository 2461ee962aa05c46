/** What writing into the spreadsheet takes, fetched as one. */

export { changeTables } from "./change-tables.ts";
export { readTableCells } from "./read-table-cells.ts";
export { writeWorkbook } from "./write-workbook.ts";
