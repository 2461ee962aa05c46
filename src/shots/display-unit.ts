import { isProblem } from "../outcome/problem.ts";
import { factor } from "../units/factor.ts";
import { type MetricKey, metricOf, type Unit } from "./metrics.ts";

/** The two sets of units that figures are shown in: yards and miles an hour, or metres. */
export type UnitSet = "us" | "metric";

/** The unit that a metric is shown in. */
export function displayUnit(key: MetricKey, set: UnitSet): Unit {
  const metric = metricOf(key);
  return set === "us" ? metric.unit : metric.metric;
}

/**
 * A figure of a shot table, as it is shown in a set of units. A missing figure (NaN) stays missing.
 *
 * @example shownIn("carry", 100, "metric") // 91.44
 */
export function shownIn(key: MetricKey, value: number, set: UnitSet): number {
  const { unit, metric } = metricOf(key);
  if (set === "us" || unit === metric) return value;
  const by = factor(unit, metric);
  return isProblem(by) ? value : (value * by.times) / by.over;
}
