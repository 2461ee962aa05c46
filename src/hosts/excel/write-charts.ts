import { cellName } from "../../sheets/a1.ts";
import type { AxisPlan, ChartPlan, SeriesPlan, SheetPlan } from "../../sheets/plan.ts";
import { CALL, type Desk, type Step } from "./step.ts";

/** Native charts over the cells of the plan. */
export function writeCharts(sheet: SheetPlan, notes: Set<string>): Step[] {
  if (sheet.charts.length > 0) {
    notes.add("The spreadsheet lets no add-in describe a chart for those who do not see it.");
  }
  return sheet.charts
    .filter(({ series }) => series.length > 0)
    .map((plan) => ({
      bytes: (20 + 14 * plan.series.length) * CALL,
      queue: (desk) => draw(desk, sheet.name, plan),
    }));
}

function draw(desk: Desk, sheet: string, plan: ChartPlan): void {
  // Drawn over one column it comes with exactly one series, which becomes the plan's first; nothing to delete.
  const source = plan.series[0]!.y;
  const chart = desk
    .sheet(sheet)
    .charts.add(
      plan.kind === "bar" ? "ColumnClustered" : "XYScatter",
      desk.range(source.sheet, source.area),
      source.area.columns === 1 ? "Columns" : "Rows",
    );
  chart.name = plan.name;
  chart.title.text = plan.title;
  for (const [i, series] of plan.series.entries()) {
    drawSeries(desk, i === 0 ? chart.series.getItemAt(0) : chart.series.add(series.name), plan, series);
  }
  const { categoryAxis, valueAxis } = chart.axes;
  drawAxis(categoryAxis, plan.x);
  drawAxis(valueAxis, plan.y);
  if (plan.kind === "scatter") {
    // The axes meet in the lower left corner, also where figures are negative.
    categoryAxis.position = "Minimum";
    valueAxis.position = "Minimum";
  }
  drawLegend(chart.legend, plan);
  const { row, column, rows, columns } = plan.area;
  chart.setPosition(cellName(row, column), cellName(row + rows - 1, column + columns - 1));
}

function drawSeries(desk: Desk, drawn: Excel.ChartSeries, { kind }: ChartPlan, series: SeriesPlan): void {
  drawn.name = series.name;
  drawn.setXAxisValues(desk.range(series.x.sheet, series.x.area));
  drawn.setValues(desk.range(series.y.sheet, series.y.area));
  if (kind === "bar") {
    drawn.format.fill.setSolidColor(series.color);
    return;
  }
  const marked = series.marker !== "none";
  const lined = series.line !== "none";
  drawn.chartType = !lined ? "XYScatter" : marked ? "XYScatterLines" : "XYScatterLinesNoMarkers";
  // Lines before markers: a line's colour would repaint the markers' edges.
  drawn.format.line.lineStyle = LINES[series.line];
  if (lined) drawn.format.line.color = series.color;
  drawn.markerStyle = MARKERS[series.marker];
  if (!marked) return;
  drawn.markerSize = Math.min(72, Math.max(2, Math.round(series.markerSize)));
  drawn.markerBackgroundColor = series.color;
  drawn.markerForegroundColor = series.color;
}

const LINES = { none: "None", solid: "Continuous", dash: "Dash" } as const;

const MARKERS = {
  circle: "Circle",
  square: "Square",
  diamond: "Diamond",
  triangle: "Triangle",
  x: "X",
  plus: "Plus",
  none: "None",
} as const;

function drawAxis(axis: Excel.ChartAxis, plan: AxisPlan): void {
  if (plan.title) axis.title.text = plan.title;
  else axis.title.visible = false;
  if (plan.least !== undefined) axis.minimum = plan.least;
  if (plan.most !== undefined) axis.maximum = plan.most;
  axis.numberFormat = plan.format;
  // Labels stay at the edge where the axis itself runs through the middle.
  axis.tickLabelPosition = plan.hideLabels ? "None" : "Low";
}

function drawLegend(legend: Excel.ChartLegend, plan: ChartPlan): void {
  legend.visible = plan.legend;
  if (!plan.legend) return;
  legend.position = "Bottom";
  for (const [i, series] of plan.series.entries()) {
    if (series.unlisted) legend.legendEntries.getItemAt(i).visible = false;
  }
}
