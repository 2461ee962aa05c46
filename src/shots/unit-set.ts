import { METRICS, type Metric, type Unit } from "./metrics.ts";

/** Which of the two sets of units people are shown; inside, figures always stay in the first. */
export type UnitSet = "us" | "metric";

/** The unit a metric is shown in. */
export function displayUnit(metric: Metric, units: UnitSet): Unit {
  return units === "us" ? metric.unit : metric.metric;
}

/** Whether any metric is shown differently in the two sets. */
export function differs(metric: Metric): boolean {
  return metric.unit !== metric.metric;
}

/** All metrics of a table in the order of METRICS. */
export function orderedMetrics(keys: Iterable<string>): Metric[] {
  const present = new Set(keys);
  return METRICS.filter((metric) => present.has(metric.key));
}
