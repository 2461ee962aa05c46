import type { ChartPlan, SeriesPlan } from "../sheets/plan.ts";
import type { Size } from "./chart-data.ts";
import { text } from "./chart-frame.ts";
import { isStroked, markerPath } from "./marker-path.ts";
import { element } from "./markup.ts";

/** Width of a letter of the legend, near enough for a sans-serif of 12 pixels. */
const LETTER = 6.4;
const KEY = 22;
const GAP = 18;

/** The listed series on one line at the foot, each with its own key. */
export function legend(chart: ChartPlan, { width, height }: Size): string {
  const listed = chart.series.filter(({ unlisted }) => !unlisted);
  if (!chart.legend || listed.length === 0) return "";
  const widths = listed.map(({ name }) => KEY + name.length * LETTER + GAP);
  let x = Math.max(8, (width - widths.reduce((sum, one) => sum + one, 0) + GAP) / 2);
  const y = height - 10;
  return listed
    .map((series, i) => {
      const entry =
        element("g", { transform: `translate(${x + KEY / 2 - 4} ${y - 4})` }, key(chart, series)) +
        text(series.name, x + KEY, y, { "text-anchor": "start" });
      x += widths[i]!;
      return entry;
    })
    .join("");
}

function key(chart: ChartPlan, series: SeriesPlan): string {
  if (chart.kind === "bar")
    return element("rect", { x: -6, y: -5, width: 12, height: 10, fill: series.color });
  const line = element("line", { x1: -9, x2: 9, y1: 0, y2: 0, ...lineLook(series) });
  return (series.line === "none" ? "" : line) + marker(series, 0, 0);
}

/** One marker of a series. Shape tells series apart as well as colour. */
export function marker(series: SeriesPlan, x: number, y: number): string {
  if (series.marker === "none") return "";
  const pixels = (series.markerSize * 4) / 3;
  return element("path", {
    d: markerPath(series.marker, pixels),
    transform: `translate(${+x.toFixed(2)} ${+y.toFixed(2)})`,
    ...(isStroked(series.marker)
      ? { fill: "none", stroke: series.color, "stroke-width": 2 }
      : { fill: series.color, stroke: "#ffffff", "stroke-width": 1 }),
  });
}

export function lineLook(series: SeriesPlan): Record<string, string | number | undefined> {
  return {
    fill: "none",
    stroke: series.color,
    "stroke-width": 2,
    "stroke-dasharray": series.line === "dash" ? "6 4" : undefined,
  };
}
