import { type IDisposable, ImageSourceType } from "@univerjs/core";
import { ISheetDrawingService, SetDrawingApplyMutation } from "@univerjs/preset-sheets-drawing";
import type { ChartData } from "../../pictures/chart-data.ts";
import { drawChart } from "../../pictures/draw-chart.ts";
import type { Area, ChartPlan, SheetArea } from "../../sheets/plan.ts";
import type { Grid, Sheet, Workbook } from "./grid.ts";
import { type ReadCell, readCells } from "./read-cells.ts";
import type { Memory } from "./remembered.ts";

/** After a burst of edits and calculations, the pictures are drawn once. */
const PAUSE = 120;

/** Puts a sheet's charts over its cells. The grid has no charts of its own, so each is a picture. */
export async function addCharts(
  workbook: Workbook,
  sheet: Sheet,
  charts: readonly ChartPlan[],
): Promise<void> {
  // The grid stumbles over an empty list of pictures.
  if (charts.length === 0) return;
  const images = charts.map((chart) => {
    const { row, column } = chart.area;
    const source = picture(chart, chartData(workbook, chart), sheet);
    const { width, height } = areaPixels(sheet, chart.area);
    return sheet
      .newOverGridImage()
      .setSource(source, ImageSourceType.BASE64)
      .setRow(row)
      .setColumn(column)
      .setWidth(width)
      .setHeight(height)
      .buildAsync();
  });
  const built = await Promise.all(images);
  sheet.insertImages(built.map((image, i) => ({ ...image, drawingId: drawingId(sheet, charts[i]!) })));
}

/** Draws the pictures again whenever the figures they show have changed. */
export function keepChartsCurrent(grid: Grid, workbook: Workbook, memory: Memory): IDisposable {
  const shown = new Map<string, string>();
  let pending: ReturnType<typeof setTimeout> | undefined;
  const redraw = () => {
    for (const [sheetId, { charts }] of memory) {
      const sheet = workbook.getSheetBySheetId(sheetId);
      if (sheet) for (const chart of charts) redrawOne(grid, workbook, sheet, chart, shown);
    }
  };
  return grid.addEvent(grid.Event.CommandExecuted, ({ id }) => {
    if (!/set-range-values|formula-calculation-result|array-formula/.test(id)) return;
    clearTimeout(pending);
    pending = setTimeout(redraw, PAUSE);
  });
}

/** Not by the grid's own command, which would put itself on the list of what can be undone. */
function redrawOne(
  grid: Grid,
  workbook: Workbook,
  sheet: Sheet,
  chart: ChartPlan,
  shown: Map<string, string>,
) {
  const id = drawingId(sheet, chart);
  const source = picture(chart, chartData(workbook, chart), sheet);
  if (shown.get(id) === source || !sheet.getImageById(id)) return;
  shown.set(id, source);
  const image = { unitId: workbook.getId(), subUnitId: sheet.getSheetId(), drawingId: id, source };
  const { unitId, subUnitId, redo, objects } = sheet
    .getInject()
    .get(ISheetDrawingService)
    .getBatchUpdateOp([image as never]) as { unitId: string; subUnitId: string; redo: never; objects: never };
  grid.syncExecuteCommand(SetDrawingApplyMutation.id, { unitId, subUnitId, op: redo, objects, type: 2 });
}

function drawingId(sheet: Sheet, chart: ChartPlan): string {
  return `${sheet.getSheetId()}:${chart.name}`;
}

function picture(chart: ChartPlan, data: ChartData, sheet: Sheet): string {
  const bytes = new TextEncoder().encode(drawChart(chart, data, areaPixels(sheet, chart.area)));
  return `data:image/svg+xml;base64,${btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""))}`;
}

/** The figures of a chart's series, from wherever in the workbook they stand. */
function chartData(workbook: Workbook, chart: ChartPlan): ChartData {
  const cells = ({ sheet, area }: SheetArea): ReadCell[] => {
    const found = workbook.getSheetByName(sheet);
    return found ? readCells(found, area).flat() : [];
  };
  return {
    series: chart.series.map(({ x, y }) => ({
      x: cells(x).map((cell) => (typeof cell === "boolean" ? String(cell) : cell)),
      y: cells(y).map((cell) => (typeof cell === "number" ? cell : null)),
    })),
  };
}

function areaPixels(sheet: Sheet, { row, column, rows, columns }: Area) {
  const sum = (length: number, size: (i: number) => number) =>
    Array.from({ length }, (_, i) => size(i)).reduce((total, one) => total + one, 0);
  return {
    width: sum(columns, (i) => sheet.getColumnWidth(column + i)),
    height: sum(rows, (i) => sheet.getRowHeight(row + i)),
  };
}
