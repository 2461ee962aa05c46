import type { ICellData, IStyleData } from "@univerjs/core";
import { NAMESPACE } from "../../functions/namespace.ts";
import { overlap } from "../../sheets/overlap.ts";
import type { Area, CellValue, SheetPlan, StyleName, WorkbookPlan } from "../../sheets/plan.ts";
import { houseLook } from "./cell-look.ts";
import type { Sheet, Workbook } from "./grid.ts";
import { areaOf } from "./grid-range.ts";
import { columnCharacters, rowPoints } from "./measures.ts";
import { namedArea } from "./named-area.ts";
import { planOfRules } from "./plan-of-rules.ts";
import { type ReadCell, readCells, spillAreas, usedArea } from "./read-cells.ts";
import type { Memory } from "./remembered.ts";

/**
 * The workbook as it stands in the grid, whoever wrote it, as a plan: what a file can be made of. Looks become the
 * nearest house look. Cells that call our own functions become their values, with all that these fill, for a reader
 * of the file may not have the functions.
 */
export function planOfGrid(workbook: Workbook, memory: Memory): WorkbookPlan {
  return {
    sheets: workbook.getSheets().map((sheet) => planOfSheet(sheet, memory)),
    names: workbook
      .getDefinedNames()
      .flatMap((name) => namedArea(name.getName(), name.getFormulaOrRefString())),
    active: workbook.getActiveSheet().getSheetName(),
  };
}

function planOfSheet(sheet: Sheet, memory: Memory): SheetPlan {
  const used = usedArea(sheet);
  const remembered = memory.get(sheet.getSheetId());
  const config = sheet.getSheet().getConfig();
  const tables = sheet.getSubTableInfos().map(({ name, range }) => ({ name, area: areaOf(range) }));
  const merges = config.mergeData.map((range) => areaOf(range));
  const { xSplit, ySplit } = sheet.getFreeze();
  return {
    name: sheet.getSheetName(),
    hidden: sheet.isSheetHidden(),
    blocks: [
      { row: 0, column: 0, cells: cellsOf(sheet, used, [...tables.map(({ area }) => area), ...merges]) },
    ],
    ...looks(sheet, used),
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

/** A file's formulas fill no cells of a table or of a merged area; where the grid's do, these become values too. */
function cellsOf(sheet: Sheet, used: Area, closed: readonly Area[]): CellValue[][] {
  const formulas = sheet.getRange(0, 0, used.rows, used.columns).getFormulas();
  const areas = spillAreas(sheet);
  const answers = readCells(sheet, used);
  const cells = answers.map((line, row) =>
    line.map((value, column): CellValue => {
      const formula = formulas[row]?.[column];
      const area = areas.get(`${row},${column}`);
      if (!formula || isValues(formula, area)) return value;
      const plain = { formula: formula.replace(/^=/, ""), value: value ?? "" };
      return area ? { ...plain, spills: partOf(answers, area) } : plain;
    }),
  );
  for (const area of areas.values()) {
    const { row, column, rows, columns } = area;
    const formula = formulas[row]?.[column];
    if (!formula || isValues(formula, area)) continue;
    for (let r = row; r < row + rows; r++) {
      for (let c = column; c < column + columns; c++) if (r > row || c > column) cells[r]![c] = null;
    }
  }
  return cells;

  function isValues(formula: string, area: Area | undefined): boolean {
    if (formula.toUpperCase().includes(`${NAMESPACE}.`)) return true;
    return area !== undefined && closed.some((other) => overlap(other, area));
  }
}

function partOf(cells: readonly (readonly ReadCell[])[], area: Area) {
  return cells
    .slice(area.row, area.row + area.rows)
    .map((line) => line.slice(area.column, area.column + area.columns).map((value) => value ?? ""));
}

function looks(sheet: Sheet, used: Area): Pick<SheetPlan, "styles" | "formats"> {
  const all = sheet.getWorkbook().getStyles();
  // Thousands of cells share a look that the grid keeps once.
  const known = new Map<unknown, { style: StyleName | undefined; format: string | undefined }>();
  const lookOf = (kept: ICellData["s"]) => {
    const found = known.get(kept);
    if (found) return found;
    const look = all.get(kept) as IStyleData | undefined;
    const format = look?.n?.pattern === "General" ? undefined : look?.n?.pattern;
    const made = { style: houseLook(look), format };
    known.set(kept, made);
    return made;
  };
  const cells = sheet.getRange(0, 0, used.rows, used.columns).getCellDatas();
  const columns = Array.from({ length: used.columns }, (_, column) =>
    cells.map((line) => lookOf(line[column]?.s)),
  );
  return {
    styles: columns.flatMap((looks, column) =>
      runsDown(looks, column, ({ style }) => style).map(([area, style]) => ({ area, style })),
    ),
    formats: columns.flatMap((looks, column) =>
      runsDown(looks, column, ({ format }) => format).map(([area, format]) => ({ area, format })),
    ),
  };
}

/** Cells of a column that have the same, one below the other, as one area; those that have nothing are left out. */
function runsDown<Look, Value>(
  looks: readonly Look[],
  column: number,
  value: (look: Look) => Value | undefined,
): [Area, Value][] {
  const runs: [{ row: number; column: number; rows: number; columns: number }, Value][] = [];
  for (const [row, look] of looks.entries()) {
    const now = value(look);
    const last = runs.at(-1);
    if (now === undefined) continue;
    if (last?.[1] === now && last[0].row + last[0].rows === row) last[0].rows++;
    else runs.push([{ row, column, rows: 1, columns: 1 }, now]);
  }
  return runs;
}
