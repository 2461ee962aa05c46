import type { Host } from "../host.ts";
import { changeTables } from "./change-tables.ts";
import { keepText, recallText } from "./kept-texts.ts";
import { readSelection } from "./read-selection.ts";
import { readTableCells } from "./read-table-cells.ts";
import { readTable, readTableNames } from "./read-tables.ts";
import { runExcel } from "./run-excel.ts";
import { readStanding } from "./standing.ts";

/** The spreadsheet that the pane is open in, reached through its add-in library. */
export function excelHost(): Host {
  return {
    name: "the spreadsheet",
    taken: () =>
      runExcel(async (context) => {
        const { sheets, names, tables } = await readStanding(context);
        return { sheets: sheets.map(({ name }) => name), names: [...names, ...tables] };
      }),
    // Fetched when there is something to write: the pane is there sooner without.
    write: async (...job) => (await import("./write-workbook.ts")).writeWorkbook(...job),
    selection: readSelection,
    tables: readTableNames,
    tableText: readTable,
    tableCells: readTableCells,
    changeTables,
    recall: recallText,
    keep: keepText,
  };
}
