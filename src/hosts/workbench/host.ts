import type { IRange, IStyleData } from "@univerjs/core";
import Papa from "papaparse";
import { isProblem, type Outcome, unavailable } from "../../outcome/problem.ts";
import { cellText } from "../cell-text.ts";
import type { Host } from "../host.ts";
import { changeTables } from "./change-tables.ts";
import { download } from "./download.ts";
import { followTable } from "./follow-table.ts";
import type { Grid, Sheet, Workbook } from "./grid.ts";
import { type TextStore, textKeeper } from "./keep-text.ts";
import { readCells, usedArea } from "./read-cells.ts";
import type { Memory } from "./remembered.ts";
import { tableCells } from "./table-cells.ts";
import { takenIn } from "./taken.ts";
import { writePlan } from "./write-plan.ts";

/** The open grid in the page, as the pane sees it. */
export function workbenchHost(grid: Grid, workbook: Workbook, memory: Memory, store: TextStore): Host {
  return {
    name: "this page",
    taken: async () => takenIn(workbook),
    write: (plan, run) => writePlan(grid, workbook, memory, plan, run),
    selection: async () => selectedText(workbook),
    tables: async () => workbook.getTableList().map(({ name }) => name),
    tableText: async (name) => tableText(workbook, name),
    tableCells: async (name, only, sought) => tableCells(workbook, name, only, sought),
    follow: async (name, told) => {
      const text = tableText(workbook, name);
      if (isProblem(text)) return text;
      // Both are found again by their identifiers, so that they may be renamed and another sheet may be in front.
      const table = workbook.getTableList().find((one) => one.name === name)?.id;
      const sheet = workbook.getActiveSheet().getSheetId();
      return followTable(grid, () => tableText(workbook, name, { table, sheet }), told);
    },
    changeTables: (changes, create, run) => changeTables(grid, workbook, memory, changes, create, run),
    download: (text, name) => download(text, name, "text/csv;charset=utf-8"),
    ...textKeeper(store),
  };
}

/** Whole columns and rows are cut to where there is something in them. */
function selectedText(workbook: Workbook): Outcome<string> {
  const selected = workbook.getActiveRange()?.getRange();
  if (!selected)
    return unavailable("Nothing is selected. Select the cells of the shot table, headings included.");
  return rangeText(workbook.getActiveSheet(), selected) ?? unavailable("The selected cells are empty.");
}

/** A table by its name, or a whole sheet, the one in front; another where they are named by identifiers. */
function tableText(
  workbook: Workbook,
  name?: string,
  known: { readonly table?: string | undefined; readonly sheet?: string } = {},
): Outcome<string> {
  if (name === undefined) {
    const sheet =
      known.sheet === undefined ? workbook.getActiveSheet() : workbook.getSheetBySheetId(known.sheet);
    if (!sheet) return unavailable("The sheet is not there any more; choose another.");
    const { rows, columns } = usedArea(sheet);
    const all = { startRow: 0, startColumn: 0, endRow: rows - 1, endColumn: columns - 1 };
    return rangeText(sheet, all) ?? unavailable("The sheet in front is empty. Go to the one with the shots.");
  }
  const table = workbook
    .getTableList()
    .find((one) => (known.table === undefined ? one.name === name : one.id === known.table));
  const sheet = table && workbook.getSheetBySheetId(table.subUnitId);
  if (!table || !sheet) return unavailable(`There is no table "${name}" any more; choose another.`);
  return rangeText(sheet, table.range) ?? unavailable(`The table "${name}" is empty.`);
}

/** Cells as tab-separated text, days as days, cut to where there is something; null where there is nothing. */
function rangeText(sheet: Sheet, range: IRange): string | null {
  const used = usedArea(sheet);
  const { startRow, startColumn } = range;
  const rows = Math.min(range.endRow + 1, used.rows) - startRow;
  const columns = Math.min(range.endColumn + 1, used.columns) - startColumn;
  if (rows < 1 || columns < 1) return null;
  const cells = readCells(sheet, { row: startRow, column: startColumn, rows, columns });
  if (cells.every((row) => row.every((cell) => cell === null))) return null;
  const styles = sheet.getWorkbook().getStyles();
  const stored = sheet.getRange(startRow, startColumn, rows, columns).getCellDatas();
  const format = (row: number, column: number) =>
    (styles.get(stored[row]?.[column]?.s) as IStyleData | undefined)?.n?.pattern ?? "";
  return Papa.unparse(
    cells.map((row, r) => row.map((cell, c) => cellText(cell, format(r, c)))),
    { delimiter: "\t", newline: "\n" },
  );
}
