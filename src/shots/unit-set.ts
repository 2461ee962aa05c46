import { METRICS, type Metric, type Unit } from "./metrics.ts";

/**
 * Which set of units people are shown: yards, miles an hour and inches; metres, metres a second and centimetres; or
 * these with kilometres an hour. Inside, figures always stay in the first.
 */
export type UnitSet = "us" | "metric" | "metric-kmh";

/** Every set of units, for lists of choices and for checking what was kept. */
export const UNIT_SETS: readonly UnitSet[] = ["us", "metric", "metric-kmh"];

/** The unit a metric is shown in. */
export function displayUnit(metric: Metric, units: UnitSet): Unit {
  if (units === "us") return metric.unit;
  return units === "metric-kmh" && metric.metric === "m/s" ? "km/h" : metric.metric;
}

/** All metrics of a table in the order of METRICS. */
export function orderedMetrics(keys: Iterable<string>): Metric[] {
  const present = new Set(keys);
  return METRICS.filter((metric) => present.has(metric.key));
}
