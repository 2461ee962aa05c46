import type { Metric, MetricKey } from "../shots/metrics.ts";
import { metricOf } from "../shots/metrics.ts";
import { displayUnit, type UnitSet } from "../shots/unit-set.ts";
import type { Figures } from "./figures.ts";

/** By what a figure kept in the first unit is multiplied to be shown in the second; all exact by definition. */
const TIMES: Readonly<Record<string, number>> = {
  "mph m/s": 0.44704,
  "yd m": 0.9144,
  "ft m": 0.3048,
};

/** The factor from a metric's own unit to the one it is shown in. */
export function displayFactor(metric: Metric, units: UnitSet): number {
  return TIMES[`${metric.unit} ${displayUnit(metric, units)}`] ?? 1;
}

/** A figure of a metric in the units and the writing of this place: `251.3 yd`. */
export function showFigure(
  key: MetricKey,
  value: number,
  units: UnitSet,
  figures: Figures,
  sign = false,
): string {
  const metric = metricOf(key);
  const write = sign ? figures.signed : figures.show;
  return `${write(value * displayFactor(metric, units), metric.decimals)}${unitTail(displayUnit(metric, units))}`;
}

/** A unit as it follows a figure: a degree sign at once, anything else after a narrow space. */
export function unitTail(unit: string): string {
  if (unit === "") return "";
  return unit === "degrees" ? "\u00b0" : `\u202f${unit}`;
}
