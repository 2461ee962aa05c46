import type { SeriesPlan } from "../sheets/plan.ts";
import { type Mark, mark } from "./mark.ts";
import { isStroked, markerPath } from "./marker-path.ts";
import { round } from "./round.ts";

/** Pixels to a point, in which spreadsheets measure markers. */
const PIXELS = 96 / 72;

/** One marker of a series, or none. Shape tells series apart as well as colour. */
export function markerMark(series: SeriesPlan, x: number, y: number): Mark[] {
  if (series.marker === "none") return [];
  const paint = isStroked(series.marker)
    ? { fill: "none", stroke: series.color, "stroke-width": 2 }
    : { fill: series.color, stroke: "#ffffff", "stroke-width": 1 };
  const d = markerPath(series.marker, series.markerSize * PIXELS);
  return [mark("path", { d, transform: `translate(${round(x)},${round(y)})`, ...paint })];
}

/** How the line of a series is stroked. */
export function lineLook({ color, line }: SeriesPlan): Mark["attributes"] {
  const solid = { fill: "none", stroke: color, "stroke-width": 2 };
  return line === "dash" ? { ...solid, "stroke-dasharray": "6 4" } : solid;
}
