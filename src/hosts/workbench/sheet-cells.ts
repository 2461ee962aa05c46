import type { ICellData, IStyleData, Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/preset-sheets-core";
import { NAMESPACE } from "../../functions/namespace.ts";
import { overlap } from "../../sheets/overlap.ts";
import type { Area, Block, CellValue, SheetPlan, StyleName } from "../../sheets/plan.ts";
import { houseLook } from "./cell-look.ts";
import type { Sheet } from "./grid.ts";
import { type ReadCell, readCell, spillAreas, spills } from "./read-cells.ts";
import { RunsDown } from "./runs-down.ts";

/** What cells hold and how they look. */
type SheetCells = Pick<SheetPlan, "blocks" | "styles" | "formats">;

/** Rows of a block: more than any sheet has but those of tables that grow for years, and read within a slice. */
const ROWS = 1000;

/**
 * The cells of a sheet as the grid has them, yielding the share read. Cells that call our own functions become their
 * values, with all that these fill, for a reader of the file may not have the functions. A file's formulas fill no cells
 * of a `closed` area, which is a table or merged; where the grid's do, these become values too.
 */
export function* sheetCells(
  sheet: Sheet,
  used: Area,
  closed: readonly Area[],
): Generator<number, SheetCells> {
  const valueAt = valuesOf(sheet, closed);
  const lookOf = looksOf(sheet);
  const matrix = sheet.getSheet().getCellMatrix();
  const blocks: Block[] = [];
  const [styles, formats] = [new RunsDown<StyleName>(), new RunsDown<string>()];
  for (let from = 0; from < used.rows; from += ROWS) {
    const to = Math.min(used.rows, from + ROWS);
    const cells: CellValue[][] = [];
    for (let row = from; row < to; row++) {
      const line: CellValue[] = [];
      for (let column = 0; column < used.columns; column++) {
        const cell = matrix.getValue(row, column);
        const { style, format } = lookOf(cell?.s);
        line.push(valueAt(cell, row, column));
        styles.add(row, column, style);
        formats.add(row, column, format);
      }
      cells.push(line);
    }
    blocks.push({ row: from, column: 0, cells });
    yield to / used.rows;
  }
  return {
    blocks,
    styles: styles.all().map(([area, style]) => ({ area, style })),
    formats: formats.all().map(([area, format]) => ({ area, format })),
  };
}

type GridCell = Nullable<ICellData>;

/** Answers what a cell holds, as a plan has it. */
function valuesOf(sheet: Sheet, closed: readonly Area[]) {
  const matrix = sheet.getSheet().getCellMatrix();
  const formulas = sheet.getInject().get(FormulaDataModel);
  const ids = [sheet.getSheetId(), sheet.getWorkbook().getUnitId()] as const;
  const spilled = spills(sheet);
  const areas = spillAreas(sheet);
  const filled = new Set<string>();
  for (const area of areas.values()) {
    const formula = formulaAt(matrix.getValue(area.row, area.column), area.row, area.column);
    if (formula === "" || isValues(formula, area)) continue;
    for (let row = area.row; row < area.row + area.rows; row++) {
      for (let column = area.column; column < area.column + area.columns; column++)
        filled.add(`${row},${column}`);
    }
  }
  return (cell: GridCell, row: number, column: number): CellValue => {
    const formula = formulaAt(cell, row, column);
    if (formula === "")
      return filled.size > 0 && filled.has(`${row},${column}`) ? null : held(cell, row, column);
    const area = areas.get(`${row},${column}`);
    const value = held(cell, row, column);
    if (isValues(formula, area)) return value;
    const plain = { formula: formula.replace(/^=/, ""), value: value ?? "" };
    return area ? { ...plain, spills: answersIn(area) } : plain;
  };

  /** The grid is asked only where there is one, for it looks through the workbook for each cell. */
  function formulaAt(cell: GridCell, row: number, column: number): string {
    return cell?.f || cell?.si ? (formulas.getFormulaStringByCell(row, column, ...ids) ?? "") : "";
  }

  function held(cell: GridCell, row: number, column: number): ReadCell {
    return readCell(cell) ?? (spilled ? readCell(spilled[row]?.[column]) : null);
  }

  function answersIn({ row, column, rows, columns }: Area) {
    return Array.from({ length: rows }, (_, i) =>
      Array.from(
        { length: columns },
        (_, j) => held(matrix.getValue(row + i, column + j), row + i, column + j) ?? "",
      ),
    );
  }

  function isValues(formula: string, area: Area | undefined): boolean {
    if (formula.toUpperCase().includes(`${NAMESPACE}.`)) return true;
    return area !== undefined && closed.some((other) => overlap(other, area));
  }
}

/** Answers the look of a cell. Thousands of cells share one that the grid keeps once. */
function looksOf(sheet: Sheet) {
  const all = sheet.getWorkbook().getStyles();
  const known = new Map<unknown, { style: StyleName | undefined; format: string | undefined }>();
  return (kept: ICellData["s"]) => {
    const found = known.get(kept);
    if (found) return found;
    const look = all.get(kept) as IStyleData | undefined;
    const pattern = look?.n?.pattern;
    const made = { style: houseLook(look), format: pattern === "General" ? undefined : pattern };
    known.set(kept, made);
    return made;
  };
}
