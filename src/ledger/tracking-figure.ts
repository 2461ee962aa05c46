import { isProblem } from "../outcome/problem.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import { readFigure } from "../shots/read-figure.ts";
import { factor } from "../units/factor.ts";

/** A mean and, where the same cell says it, a spread, in the units of the ledger; null where it is not understood. */
export interface TrackingFigure {
  readonly mean: number;
  readonly sd: number | null;
}

/**
 * Reads a measured figure of a tracking sheet: "162.4", "148 m", "162.4 ± 3.1", "12 R". The unit in the cell goes before
 * that of the heading; where neither says, `usual` counts.
 */
export function trackingFigure(
  cell: string,
  metric: MetricKey,
  unit: string,
  decimal: "." | ",",
): TrackingFigure | null {
  const [first, second, more] = cell.split(/\s*(?:±|\+\/-|\+-)\s*/);
  if (first === undefined || more !== undefined) return null;
  const mean = readFigure(first.trim(), metric, decimal);
  const spread = second === undefined ? null : readFigure(second.trim(), metric, decimal);
  if (!mean || (second !== undefined && !spread)) return null;
  const stated = mean.unit || spread?.unit || unit;
  const turn = (value: number) => converted(value, stated, metricOf(metric).unit);
  const [value, sd] = [turn(mean.value), spread ? turn(spread.value) : null];
  if (value === null || (spread && sd === null)) return null;
  return { mean: value, sd };
}

/** Shaft weight in grams, club length in inches, loft in degrees. */
export function trackingMeasure(
  cell: string,
  key: "shaftWeight" | "length" | "loft" | "tempo",
  unit: string,
  decimal: "." | ",",
): number | null {
  const found = /^([+-]?[\d.,]+)\s*(.*?)\.?$/.exec(cell.trim());
  if (!found) return null;
  const figure = Number(decimal === "," ? found[1]!.replace(",", ".") : found[1]!.replace(",", ""));
  const stated = (found[2] || unit).toLowerCase().replace(/\s/g, "");
  if (!Number.isFinite(figure)) return null;
  if (key === "tempo") return stated === "" || /^:?1$/.test(stated) || stated === "to1" ? figure : null;
  if (key === "loft") return /^(°|º|deg|degrees?)?$/.test(stated) ? figure : null;
  if (key === "shaftWeight") {
    if (/^(g|gr|gram|grams|gramm)?$/.test(stated)) return figure;
    // The avoirdupois ounce by its international definition.
    return /^(oz|ounces?)$/.test(stated) ? figure * 28.349523125 : null;
  }
  return converted(figure, stated === "" ? "in" : stated, "in");
}

function converted(value: number, from: string, to: string): number | null {
  if (from === "" || from === to) return value;
  const by = factor(from, to);
  return isProblem(by) ? null : (value * by.times) / by.over;
}
