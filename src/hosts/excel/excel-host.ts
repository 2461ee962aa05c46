import type { Host } from "../host.ts";
import { keepText, recallText } from "./kept-texts.ts";
import { readSelection } from "./read-selection.ts";
import { readTable, readTableNames } from "./read-tables.ts";
import { runExcel } from "./run-excel.ts";
import { readStanding } from "./standing.ts";
import { writeWorkbook } from "./write-workbook.ts";

/** The spreadsheet that the pane is open in, reached through its add-in library. */
export function excelHost(): Host {
  return {
    name: "the spreadsheet",
    taken: () =>
      runExcel(async (context) => {
        const { sheets, names, tables } = await readStanding(context);
        return { sheets: sheets.map(({ name }) => name), names: [...names, ...tables] };
      }),
    write: writeWorkbook,
    selection: readSelection,
    tables: readTableNames,
    tableText: readTable,
    recall: recallText,
    keep: keepText,
  };
}
