import type { ChartPlan, SeriesPlan } from "../sheets/plan.ts";
import type { Size } from "./chart-data.ts";
import { lineLook, markerMark } from "./chart-marks.ts";
import { text } from "./chart-text.ts";
import { type Mark, mark } from "./mark.ts";

/** Width of a letter of the legend, near enough for a sans-serif of 12 pixels. */
const LETTER = 6;
const KEY = 22;
const GAP = 14;

/** Height of one line of the legend. */
export const LEGEND_LINE = 18;

/** The listed series on as few lines as hold them. */
export function legendLines(chart: ChartPlan, { width }: Size): readonly (readonly SeriesPlan[])[] {
  if (!chart.legend) return [];
  const lines: SeriesPlan[][] = [];
  for (const series of chart.series.filter(({ unlisted }) => !unlisted)) {
    const line = lines.at(-1);
    if (line && lineWidth([...line, series]) <= width - 16) line.push(series);
    else lines.push([series]);
  }
  return lines;
}

/** The legend at the foot, each series with its own key. */
export function legend(chart: ChartPlan, size: Size): Mark[] {
  const lines = legendLines(chart, size);
  return lines.flatMap((line, i) => {
    let x = (size.width - lineWidth(line)) / 2;
    const y = size.height - 10 - (lines.length - 1 - i) * LEGEND_LINE;
    return line.map((series) => {
      const place = x;
      x += entryWidth(series) + GAP;
      return mark("g", {}, ...key(chart, series, place + 7, y - 4), nameOf(series, place + KEY, y));
    });
  });
}

function nameOf({ name }: SeriesPlan, x: number, y: number): Mark {
  return text(name, x, y, { "text-anchor": "start" });
}

function key(chart: ChartPlan, series: SeriesPlan, x: number, y: number): Mark[] {
  if (chart.kind === "bar") {
    return [mark("rect", { x: x - 6, y: y - 5, width: 12, height: 10, fill: series.color })];
  }
  const line = mark("line", { x1: x - 9, x2: x + 9, y1: y, y2: y, ...lineLook(series) });
  return [...(series.line === "none" ? [] : [line]), ...markerMark(series, x, y)];
}

function lineWidth(line: readonly SeriesPlan[]): number {
  return line.reduce((sum, series) => sum + entryWidth(series) + GAP, -GAP);
}

function entryWidth({ name }: SeriesPlan): number {
  return KEY + name.length * LETTER;
}
