import { cellName } from "../../sheets/a1.ts";
import { CHART_LOOK } from "../../sheets/chart-look.ts";
import type { ChartPlan, SheetArea, SheetPlan } from "../../sheets/plan.ts";
import { drawAxes } from "./draw-axes.ts";
import { drawSeries, seriesName } from "./draw-series.ts";
import { CALL, type Desk, type Step } from "./step.ts";

/** Native charts over the cells of the plan. */
export function writeCharts(sheet: SheetPlan, notes: Set<string>): Step[] {
  if (sheet.charts.length > 0) {
    notes.add("The spreadsheet lets no add-in describe a chart for those who do not see it.");
  }
  return sheet.charts
    .filter(({ series }) => series.length > 0)
    .map((plan) => ({
      bytes: (52 + 14 * plan.series.length) * CALL,
      queue: (desk) => draw(desk, sheet.name, plan),
    }));
}

function draw(desk: Desk, sheet: string, plan: ChartPlan): void {
  // Drawn over one row or column it comes with exactly one series, which becomes the plan's first.
  const source = sourceOf(plan.series[0]!.y);
  const chart = desk
    .sheet(sheet)
    .charts.add(
      plan.kind === "bar" ? "ColumnClustered" : "XYScatter",
      desk.range(source.sheet, source.area),
      source.area.columns === 1 ? "Columns" : "Rows",
    );
  chart.name = plan.name;
  chart.title.text = plan.title;
  const { font } = chart.title.format;
  font.size = CHART_LOOK.titleSize;
  font.bold = true;
  font.color = CHART_LOOK.ink;
  chart.format.fill.setSolidColor(CHART_LOOK.background);
  chart.format.border.color = CHART_LOOK.border;
  for (const [i, series] of plan.series.entries()) {
    drawSeries(
      desk,
      i === 0 ? chart.series.getItemAt(0) : chart.series.add(seriesName(series.name)),
      plan.kind,
      series,
    );
  }
  drawAxes(chart.axes, plan);
  drawLegend(chart.legend, plan);
  const { row, column, rows, columns } = plan.area;
  chart.setPosition(cellName(row, column), cellName(row + rows - 1, column + columns - 1));
}

/** A single cell would be taken for the whole table around it, so it is given company until the values are set. */
function sourceOf({ sheet, area }: SheetArea): SheetArea {
  return { sheet, area: area.rows === 1 && area.columns === 1 ? { ...area, rows: 2 } : area };
}

function drawLegend(legend: Excel.ChartLegend, plan: ChartPlan): void {
  legend.visible = plan.legend;
  if (!plan.legend) return;
  legend.position = "Bottom";
  // From the last to the first: should an entry that goes move up those behind it, the numbers still hold.
  for (let i = plan.series.length - 1; i >= 0; i--) {
    if (plan.series[i]!.unlisted) legend.legendEntries.getItemAt(i).visible = false;
  }
}
