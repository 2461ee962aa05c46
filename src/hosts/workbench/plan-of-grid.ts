import type { Area, SheetPlan, WorkbookPlan } from "../../sheets/plan.ts";
import { partOf } from "../../slices/part-of.ts";
import type { Sheet, Workbook } from "./grid.ts";
import { areaOf } from "./grid-range.ts";
import { columnCharacters, rowPoints } from "./measures.ts";
import { namedArea } from "./named-area.ts";
import { planOfRules } from "./plan-of-rules.ts";
import { usedArea } from "./read-cells.ts";
import type { Memory } from "./remembered.ts";
import { sheetCells } from "./sheet-cells.ts";

/**
 * The workbook as it stands in the grid, whoever wrote it, as a plan: what a file can be made of. Looks become the
 * nearest house look. Yields the share read, for a workbook may hold hundreds of thousands of shots.
 */
export function* planOfGrid(workbook: Workbook, memory: Memory): Generator<number, WorkbookPlan> {
  const open = workbook.getSheets().map((sheet) => ({ sheet, used: usedArea(sheet) }));
  const all = open.reduce((sum, { used }) => sum + used.rows, 0);
  const sheets: SheetPlan[] = [];
  let read = 0;
  for (const { sheet, used } of open) {
    sheets.push(yield* partOf(planOfSheet(sheet, used, memory), read / all, (read + used.rows) / all));
    read += used.rows;
  }
  return {
    sheets,
    names: workbook
      .getDefinedNames()
      .flatMap((name) => namedArea(name.getName(), name.getFormulaOrRefString())),
    active: workbook.getActiveSheet().getSheetName(),
  };
}

function* planOfSheet(sheet: Sheet, used: Area, memory: Memory): Generator<number, SheetPlan> {
  const remembered = memory.get(sheet.getSheetId());
  const config = sheet.getSheet().getConfig();
  const tables = sheet.getSubTableInfos().map(({ name, range }) => ({ name, area: areaOf(range) }));
  const merges = config.mergeData.map((range) => areaOf(range));
  const { xSplit, ySplit } = sheet.getFreeze();
  return {
    name: sheet.getSheetName(),
    hidden: sheet.isSheetHidden(),
    ...(yield* sheetCells(sheet, used, [...tables.map(({ area }) => area), ...merges])),
    widths: Object.entries(config.columnData).flatMap(([column, data]) =>
      data?.w === undefined ? [] : [{ column: +column, columns: 1, characters: columnCharacters(data.w) }],
    ),
    // A height that the grid chose to fit its text (`ia` is not 0) is left to whoever opens the file.
    heights: Object.entries(config.rowData).flatMap(([row, data]) =>
      data?.h === undefined || data.ia !== 0 ? [] : [{ row: +row, rows: 1, points: rowPoints(data.h) }],
    ),
    merges,
    ...(xSplit + ySplit > 0 && { frozen: { rows: ySplit, columns: xSplit } }),
    tables,
    ...planOfRules(sheet),
    charts: remembered?.charts ?? [],
    notes: sheet.getNotes().map(({ row, col, note }) => ({ row, column: col, text: note })),
    ...(remembered?.print && { print: remembered.print }),
  };
}
