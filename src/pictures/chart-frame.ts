import { type ScaleLinear, scaleLinear } from "d3-scale";
import type { AxisPlan, ChartPlan } from "../sheets/plan.ts";
import { INK, RULE } from "../sheets/styles.ts";
import type { Size } from "./chart-data.ts";
import { element, escaped } from "./markup.ts";
import { numberText } from "./number-text.ts";

/** Where the points of a chart go, in pixels. */
export interface Plot {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const FONT = 12;
const TITLE = 15;

/** Room for the title, the legend and the labels of the axes. */
export function plotOf(chart: ChartPlan, { width, height }: Size): Plot {
  const legend = chart.legend ? FONT + 12 : 0;
  return {
    left: (chart.y.title ? 24 : 8) + (chart.y.hideLabels ? 6 : 40),
    top: TITLE + 22,
    right: width - 18,
    bottom: height - legend - (chart.x.hideLabels ? 8 : FONT + 12) - (chart.x.title ? FONT + 8 : 0),
  };
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
export function titles(chart: ChartPlan, { width }: Size, plot: Plot): string {
  const middle = (plot.top + plot.bottom) / 2;
  const below = plot.bottom + (chart.x.hideLabels ? 8 : FONT + 12) + FONT;
  const centre = (plot.left + plot.right) / 2;
  return [
    text(chart.title, width / 2, TITLE + 5, { "font-size": TITLE, "font-weight": "bold" }),
    chart.x.title && text(chart.x.title, centre, below),
    chart.y.title && text(chart.y.title, 0, 0, { transform: `translate(16 ${middle}) rotate(-90)` }),
  ].join("");
}

/** Lines across at round figures, with their labels, and a stronger line at 0. */
export function upright(axis: AxisPlan, scale: ScaleLinear<number, number>, plot: Plot): string {
  return scale
    .ticks(Math.max(3, Math.round((plot.bottom - plot.top) / 45)))
    .map((tick) => {
      const y = scale(tick);
      const line = element("line", { x1: plot.left, x2: plot.right, y1: y, y2: y, ...strength(tick) });
      const label = text(numberText(tick, axis.format), plot.left - 6, y + FONT / 3, {
        "text-anchor": "end",
      });
      return line + (axis.hideLabels ? "" : label);
    })
    .join("");
}

export function level(axis: AxisPlan, scale: ScaleLinear<number, number>, plot: Plot): string {
  return scale
    .ticks(Math.max(3, Math.round((plot.right - plot.left) / 70)))
    .map((tick) => {
      const x = scale(tick);
      const line = element("line", { x1: x, x2: x, y1: plot.top, y2: plot.bottom, ...strength(tick) });
      return line + (axis.hideLabels ? "" : text(numberText(tick, axis.format), x, plot.bottom + FONT + 5));
    })
    .join("");
}

export function text(
  words: string,
  x: number,
  y: number,
  more: Record<string, string | number> = {},
): string {
  const place = "transform" in more ? {} : { x, y };
  return element(
    "text",
    { ...place, "text-anchor": "middle", "font-size": FONT, fill: INK, ...more },
    escaped(words),
  );
}

function strength(tick: number) {
  return tick === 0
    ? { stroke: "#6b6f6c", "stroke-width": 1.2 }
    : { stroke: RULE, "stroke-width": 0.6, "stroke-opacity": 0.7 };
}
