import Papa from "papaparse";
import { type Outcome, unavailable } from "../../outcome/problem.ts";
import type { Host } from "../host.ts";
import type { Grid, Workbook } from "./grid.ts";
import { type TextStore, textKeeper } from "./keep-text.ts";
import { readCells, usedArea } from "./read-cells.ts";
import type { Memory } from "./remembered.ts";
import { takenIn } from "./taken.ts";
import { writePlan } from "./write-plan.ts";

/** The open grid in the page, as the pane sees it. */
export function workbenchHost(grid: Grid, workbook: Workbook, memory: Memory, store: TextStore): Host {
  return {
    name: "this page",
    taken: async () => takenIn(workbook),
    write: (plan, run) => writePlan(grid, workbook, memory, plan, run),
    selection: async () => selectedText(workbook),
    ...textKeeper(store),
  };
}

/** Whole columns and rows are cut to where there is something in them. */
function selectedText(workbook: Workbook): Outcome<string> {
  const selected = workbook.getActiveRange()?.getRange();
  const sheet = workbook.getActiveSheet();
  const used = usedArea(sheet);
  if (!selected)
    return unavailable("Nothing is selected. Select the cells of the shot table, headings included.");
  const { startRow, startColumn } = selected;
  const rows = Math.min(selected.endRow + 1, used.rows) - startRow;
  const columns = Math.min(selected.endColumn + 1, used.columns) - startColumn;
  if (rows < 1 || columns < 1) return unavailable("The selected cells are empty.");
  const cells = readCells(sheet, { row: startRow, column: startColumn, rows, columns });
  return Papa.unparse(
    cells.map((row) => row.map((cell) => (typeof cell === "boolean" ? String(cell).toUpperCase() : cell))),
    { delimiter: "\t", newline: "\n" },
  );
}
