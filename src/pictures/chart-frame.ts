import { type ScaleLinear, scaleLinear } from "d3-scale";
import type { AxisPlan, ChartPlan } from "../sheets/plan.ts";
import { RULE } from "../sheets/styles.ts";
import type { Size } from "./chart-data.ts";
import { LEGEND_LINE, legendLines } from "./chart-legend.ts";
import { FONT, text } from "./chart-text.ts";
import { type Mark, mark } from "./mark.ts";
import { numberText } from "./number-text.ts";
import { round } from "./round.ts";
import { MOST_LINES } from "./wrapped-words.ts";

/** Where the points of a chart go, in pixels. */
export interface Plot {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Pixels of the title's letters, and the mean width of a bold letter against its height, about, in a wide face. */
const TITLE = 15;
const BOLD_LETTER = 0.65;

/** Room for the title, the legend and the labels of the axes. */
export function plotOf(chart: ChartPlan, { width, height }: Size): Plot {
  const lines = legendLines(chart, { width, height }).length;
  const legend = lines > 0 ? lines * LEGEND_LINE + 6 : 0;
  return {
    left: (chart.y.title ? 24 : 8) + (chart.y.hideLabels ? 6 : 40),
    top: TITLE + 22,
    right: width - 18,
    bottom: height - legend - labelRoom(chart) - (chart.x.title ? FONT + 8 : 0),
  };
}

/** Height of the labels along the bottom; names of bars take up to three lines. */
function labelRoom({ kind, x }: ChartPlan): number {
  if (x.hideLabels) return 8;
  return FONT + 12 + (kind === "bar" ? (MOST_LINES - 1) * (FONT + 2) : 0);
}

/** From figures to pixels. Bounds that the plan leaves open are chosen round, a little beyond the figures. */
export function axisScale(
  axis: AxisPlan,
  figures: readonly number[],
  from: number,
  to: number,
): ScaleLinear<number, number> {
  const lowest = Math.min(...figures, ...(figures.length ? [] : [0]));
  const highest = Math.max(...figures, ...(figures.length ? [] : [1]));
  const margin = (highest - lowest || Math.abs(highest) || 1) * 0.05;
  const scale = scaleLinear()
    .domain([axis.least ?? lowest - margin, axis.most ?? highest + margin])
    .range([from, to]);
  const [nicelyLow, nicelyHigh] = scale.copy().nice(6).domain() as [number, number];
  return scale.domain([axis.least ?? nicelyLow, axis.most ?? nicelyHigh]);
}

/** Title and titles of the axes. */
export function titles(chart: ChartPlan, { width }: Size, plot: Plot): Mark[] {
  const middle = (plot.top + plot.bottom) / 2;
  const below = plot.bottom + labelRoom(chart) + FONT;
  const sideways = { transform: `translate(16 ${round(middle)}) rotate(-90)` };
  return [
    text(chart.title, width / 2, TITLE + 5, {
      "font-size": titleSize(chart.title, width),
      "font-weight": "bold",
    }),
    ...(chart.x.title ? [text(chart.x.title, (plot.left + plot.right) / 2, below)] : []),
    ...(chart.y.title ? [text(chart.y.title, 0, 0, sideways)] : []),
  ];
}

/** A title too long for its letters gets smaller ones; a second line would set the chart off from those beside it. */
function titleSize(title: string, width: number): number {
  return round(Math.min(TITLE, (width - 12) / (title.length * BOLD_LETTER)));
}

/** Lines across at round figures, with their labels, and a stronger line at 0. */
export function linesAcross(axis: AxisPlan, scale: ScaleLinear<number, number>, plot: Plot): Mark[] {
  return scale.ticks(Math.max(3, Math.round((plot.bottom - plot.top) / 45))).flatMap((tick) => {
    const y = round(scale(tick));
    const line = mark("line", { x1: plot.left, x2: plot.right, y1: y, y2: y, ...strength(tick) });
    const label = text(numberText(tick, axis.format), plot.left - 6, y + 4, { "text-anchor": "end" });
    return axis.hideLabels ? [line] : [line, label];
  });
}

/** Lines up at round figures, with their labels below. */
export function linesUp(axis: AxisPlan, scale: ScaleLinear<number, number>, plot: Plot): Mark[] {
  return scale.ticks(Math.max(3, Math.round((plot.right - plot.left) / 70))).flatMap((tick) => {
    const x = round(scale(tick));
    const line = mark("line", { x1: x, x2: x, y1: plot.top, y2: plot.bottom, ...strength(tick) });
    const label = text(numberText(tick, axis.format), x, plot.bottom + FONT + 5);
    return axis.hideLabels ? [line] : [line, label];
  });
}

function strength(tick: number): Mark["attributes"] {
  return tick === 0
    ? { stroke: "#6b6f6c", "stroke-width": 1.2 }
    : { stroke: RULE, "stroke-width": 0.6, "stroke-opacity": 0.7 };
}
