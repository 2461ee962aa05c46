import { CellValueType, type ICellData, type IStyleData, type IWorksheetData } from "@univerjs/core";
import type { Area, CellValue, SheetPlan } from "../../sheets/plan.ts";
import { showsGridlines } from "../../sheets/shows-gridlines.ts";
import { STYLES } from "../../sheets/styles.ts";
import { gridLook } from "./cell-look.ts";
import { gridRange } from "./grid-range.ts";
import { columnPixels, rowPixels } from "./measures.ts";

/** Room below and to the right of what a plan fills. */
const SPARE_ROWS = 60;
const SPARE_COLUMNS = 8;

/**
 * All of a sheet that the grid keeps in the sheet itself: cells, looks, widths, heights, merges and frozen panes.
 * The grid takes it in one step, which is quick and leaves nothing half-written.
 */
export function sheetData(plan: SheetPlan): Partial<IWorksheetData> {
  const cells: Record<number, Record<number, ICellData>> = {};
  const at = (row: number, column: number) => {
    cells[row] ??= {};
    cells[row][column] ??= {};
    return cells[row][column];
  };
  for (const block of plan.blocks) {
    block.cells.forEach((line, i) => {
      line.forEach((value, j) => {
        if (value !== null) Object.assign(at(block.row + i, block.column + j), cellData(value));
      });
    });
  }
  for (const { area, style } of plan.styles) {
    const look = gridLook(STYLES[style]);
    everyCell(area, (row, column) => {
      at(row, column).s = look;
    });
  }
  for (const { area, format } of plan.formats) {
    everyCell(area, (row, column) => {
      const cell = at(row, column);
      cell.s = { ...(cell.s as IStyleData | undefined), n: { pattern: format } };
    });
  }
  for (const cell of Object.values(cells).flatMap((row) => Object.values(row))) {
    // A formula without a format would take that of the cells it reads.
    if (cell.f) cell.s = { n: { pattern: "General" }, ...(cell.s as IStyleData | undefined) };
  }
  const areas = [
    ...plan.blocks.map(({ row, column, cells }) => ({
      row,
      column,
      rows: cells.length,
      columns: cells[0]?.length ?? 0,
    })),
    ...plan.charts.map(({ area }) => area),
  ];
  return {
    name: plan.name,
    rowCount: Math.max(100, SPARE_ROWS + Math.max(0, ...areas.map(({ row, rows }) => row + rows))),
    columnCount: Math.max(20, SPARE_COLUMNS + Math.max(0, ...areas.map((a) => a.column + a.columns))),
    defaultStyle: gridLook(STYLES.plain),
    cellData: cells,
    mergeData: plan.merges.map(gridRange),
    columnData: Object.fromEntries(
      plan.widths.flatMap(({ column, columns, characters }) =>
        range(columns).map((i) => [column + i, { w: columnPixels(characters) }]),
      ),
    ),
    rowData: Object.fromEntries(
      // `ia` 0: the height stays as planned, whatever the text in the row.
      plan.heights.flatMap(({ row, rows, points }) =>
        range(rows).map((i) => [row + i, { h: rowPixels(points), ia: 0 }]),
      ),
    ),
    ...(plan.frozen && {
      freeze: {
        xSplit: plan.frozen.columns,
        ySplit: plan.frozen.rows,
        startRow: plan.frozen.rows || -1,
        startColumn: plan.frozen.columns || -1,
      },
    }),
    showGridlines: showsGridlines(plan) ? 1 : 0,
  };
}

function cellData(value: Exclude<CellValue, null>): ICellData {
  if (typeof value === "object") return { f: `=${value.formula}`, ...cellData(value.value) };
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: CellValueType.STRING };
}

function everyCell(area: Area, visit: (row: number, column: number) => void): void {
  for (const i of range(area.rows)) for (const j of range(area.columns)) visit(area.row + i, area.column + j);
}

function range(length: number): number[] {
  return Array.from({ length }, (_, i) => i);
}
