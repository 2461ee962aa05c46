import type { Host } from "../host.ts";
import { keepText, recallText } from "./kept-texts.ts";
import { readSelection } from "./read-selection.ts";
import { runExcel } from "./run-excel.ts";
import { readStanding } from "./standing.ts";

/** Fetched when there is something to write, or a table to take: the pane is there sooner without. */
const writing = () => import("./writing.ts");
const tables = () => import("./tables.ts");

/** The spreadsheet that the pane is open in, reached through its add-in library. */
export function excelHost(): Host {
  return {
    name: "the spreadsheet",
    taken: () =>
      runExcel(async (context) => {
        const { sheets, names, tables: held } = await readStanding(context);
        return { sheets: sheets.map(({ name }) => name), names: [...names, ...held] };
      }),
    write: async (...job) => (await writing()).writeWorkbook(...job),
    selection: readSelection,
    tables: async () => (await tables()).readTableNames(),
    tableText: async (name) => (await tables()).readTable(name),
    follow: async (...asked) => (await tables()).followTable(...asked),
    tableCells: async (...asked) => (await writing()).readTableCells(...asked),
    changeTables: async (...job) => (await writing()).changeTables(...job),
    recall: recallText,
    keep: keepText,
  };
}
