import { isProblem } from "../outcome/problem.ts";
import { factor } from "../units/factor.ts";
import type { Metric } from "./metrics.ts";
import { displayUnit, type UnitSet } from "./unit-set.ts";

/** Turns a figure as it is kept inside into the unit it is shown in. */
export function showing(metric: Metric, units: UnitSet): (value: number) => number {
  return showingIn(metric, displayUnit(metric, units));
}

/** The same into a unit that a table came in; one that the metric cannot have changes nothing. */
export function showingIn(metric: Metric, unit: string): (value: number) => number {
  if (unit === metric.unit) return (value) => value;
  const found = factor(metric.unit, unit);
  return isProblem(found) ? (value) => value : (value) => (value * found.times) / found.over;
}
