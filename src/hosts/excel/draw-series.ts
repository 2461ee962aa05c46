import type { ChartPlan, SeriesPlan } from "../../sheets/plan.ts";
import type { Desk } from "./step.ts";

/** Width in points of a line drawn between points. */
const LINE_WIDTH = 1.5;

/** One series of a native chart: its cells, and its marker and line, or the fill of its bars. */
export function drawSeries(
  desk: Desk,
  drawn: Excel.ChartSeries,
  kind: ChartPlan["kind"],
  series: SeriesPlan,
): void {
  drawn.name = seriesName(series.name);
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
  const { line } = drawn.format;
  line.lineStyle = LINES[series.line];
  if (lined) {
    line.color = series.color;
    line.weight = LINE_WIDTH;
  }
  drawn.markerStyle = MARKERS[series.marker];
  if (!marked) return;
  drawn.markerSize = Math.min(72, Math.max(2, Math.round(series.markerSize)));
  drawn.markerBackgroundColor = series.color;
  drawn.markerForegroundColor = series.color;
}

/**
 * A series' name as the spreadsheet takes it for one: behind "=" it would look for cells, so a build that is called so
 * has a space before it.
 */
export const seriesName = (name: string) => (name.startsWith("=") ? ` ${name}` : name);

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
