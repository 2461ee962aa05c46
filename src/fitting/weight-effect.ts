import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import type { MetricKey } from "../shots/metrics.ts";
import { orderedMetrics } from "../shots/unit-set.ts";
import { type Numbers, ols } from "../stats/index.ts";
import type { Session } from "./session.ts";

/** What ten grams more shaft go with in one metric. */
export interface WeightEffect {
  readonly metric: MetricKey;
  /** Change of the metric for each 10 g more. */
  readonly per10g: number;
  readonly low: number;
  readonly high: number;
  readonly p: number;
  readonly n: number;
}

/** Beside every effect of weight, for it is never weight alone. */
export const WEIGHT_WARNING =
  "The builds differ in profile, length and flex as well as in weight, so this is what went with weight here, not what weight alone does. A faster swing does not always want a heavier shaft.";

/** Change of a metric per 10 g of shaft weight, by a straight line through single shots with 95 % limits. */
export function weightEffect(values: Numbers, weights: Numbers): Outcome<Omit<WeightEffect, "metric">> {
  const known = Array.from(weights).filter((weight, i) => !Number.isNaN(weight) && !Number.isNaN(values[i]!));
  if (new Set(known).size < 2)
    return unavailable("It takes builds of at least two known shaft weights to see what weight does.");
  // Through two shots any line goes exactly; the third shows how far off it may be.
  if (known.length < 3)
    return unavailable(
      "It takes at least three shots of known shaft weight to see what weight does; there are 2.",
    );
  const line = ols(weights, values);
  if (isProblem(line)) return line;
  const { value, low, high, p } = line.slope;
  return { per10g: 10 * value, low: 10 * low, high: 10 * high, p, n: line.n };
}

/** The effect of weight on every metric of a session; metrics without one are left out. */
export function weightEffects(session: Session): WeightEffect[] {
  const { table } = session;
  const weights = new Map(session.builds.map((build) => [build.name, build.weight ?? Number.NaN]));
  const ofShots = table.build.map((name, i) => (table.keep[i] ? weights.get(name)! : Number.NaN));
  return orderedMetrics(table.values.keys()).flatMap(({ key }) => {
    const effect = weightEffect(table.values.get(key)!, ofShots);
    return isProblem(effect) ? [] : [{ metric: key, ...effect }];
  });
}
