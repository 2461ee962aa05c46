import { isProblem } from "../outcome/problem.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import { readFigure } from "../shots/read-figure.ts";
import { displayUnit, type UnitSet } from "../shots/unit-set.ts";
import { factor } from "../units/factor.ts";

/** A mean and, where the same cell says it, a spread, in the units of the ledger; null where it is not understood. */
export interface TrackingFigure {
  readonly mean: number;
  readonly sd: number | null;
  /** Whether the cell itself says left or right. */
  readonly sided: boolean;
  /** The unit it was taken to be in where nobody stated one; null where one was stated, or there is but one. */
  readonly assumed: string | null;
}

/**
 * Reads a measured figure of a tracking sheet: "162.4", "148 m", "162.4 ± 3.1", "12 R". The unit in the cell goes before
 * that of the heading; where neither says, the figure is taken to be in what `units` show, and `assumed` names it.
 */
export function trackingFigure(
  cell: string,
  metric: MetricKey,
  unit: string,
  decimal: "." | ",",
  units: UnitSet = "us",
): TrackingFigure | null {
  const [first, second, more] = cell.split(/\s*(?:±|\+\/-|\+-)\s*/);
  if (first === undefined || more !== undefined) return null;
  const mean = readFigure(first.trim(), metric, decimal);
  const spread = second === undefined ? null : readFigure(second.trim(), metric, decimal);
  if (!mean || (second !== undefined && !spread)) return null;
  const known = metricOf(metric);
  const stated = mean.unit || spread?.unit || unit;
  const turn = (value: number) => converted(value, stated || displayUnit(known, units), known.unit);
  const [value, sd] = [turn(mean.value), spread ? turn(spread.value) : null];
  if (value === null || (spread && sd === null)) return null;
  // Degrees and turns a minute are all that angles and spin come in.
  const open = stated === "" && known.unit !== known.metric;
  return { mean: value, sd, sided: mean.sided, assumed: open ? displayUnit(known, units) : null };
}

/** Shaft weight in grams, club length in inches, loft in degrees; a length without a unit is taken for inches. */
export function trackingMeasure(
  cell: string,
  key: "shaftWeight" | "length" | "loft" | "tempo",
  unit: string,
  decimal: "." | ",",
): { readonly value: number; readonly assumed: string | null } | null {
  const found = /^([+-]?[\d.,]+)\s*(.*?)\.?$/.exec(cell.trim());
  if (!found) return null;
  const figure = Number(decimal === "," ? found[1]!.replace(",", ".") : found[1]!.replace(",", ""));
  const stated = (found[2] || unit).toLowerCase().replace(/\s/g, "");
  if (!Number.isFinite(figure)) return null;
  const as = (value: number | null, assumed: string | null = null) =>
    value === null ? null : { value, assumed };
  if (key === "tempo") return as(stated === "" || /^:?1$|^to1$/.test(stated) ? figure : null);
  if (key === "loft") return as(/^(°|º|deg|degrees?)?$/.test(stated) ? figure : null);
  if (key === "shaftWeight") {
    if (/^(g|gr|gram|grams|gramm)?$/.test(stated)) return as(figure);
    // The avoirdupois ounce by its international definition.
    return as(/^(oz|ounces?)$/.test(stated) ? figure * 28.349523125 : null);
  }
  return stated === "" ? as(figure, "in") : as(converted(figure, stated, "in"));
}

function converted(value: number, from: string, to: string): number | null {
  if (from === "" || from === to) return value;
  const by = factor(from, to);
  return isProblem(by) ? null : (value * by.times) / by.over;
}
