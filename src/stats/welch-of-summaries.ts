import { invalid, type Outcome, unavailable } from "../outcome/problem.ts";
import { finite } from "./finite.ts";
import { tQuantile } from "./t-quantile.ts";
import { tUpperTail } from "./t-upper-tail.ts";
import type { MeanDifference } from "./welch.ts";

/** Count, mean and sample standard deviation of a group whose single values are not at hand. */
export interface MeanAndSpread {
  readonly n: number;
  readonly mean: number;
  readonly sd: number;
}

/** `welch` from counts, means and spreads: first minus second, 95 % limits. */
export function welchOfSummaries(first: MeanAndSpread, second: MeanAndSpread): Outcome<MeanDifference> {
  const both = [first, second];
  if (both.some(({ n }) => !(n >= 2))) {
    return unavailable(
      `A difference with limits needs two values in each group; there are ${first.n} and ${second.n}.`,
    );
  }
  if (both.some(({ mean, sd }) => !Number.isFinite(mean) || !(sd >= 0 && sd < Infinity))) {
    return invalid("Means should be numbers and spreads numbers from 0 up.");
  }
  const [errorA, errorB] = both.map(({ sd, n }) => sd ** 2 / n) as [number, number];
  const variance = errorA + errorB;
  if (variance === 0)
    return unavailable("Nothing varies within the groups, so nothing tells how sure the means are.");
  const df = 1 / ((errorA / variance) ** 2 / (first.n - 1) + (errorB / variance) ** 2 / (second.n - 1));
  const standardError = Math.sqrt(variance);
  const difference = first.mean - second.mean;
  const t = difference / standardError;
  const half = tQuantile(0.975, df) * standardError;
  const p = 2 * tUpperTail(Math.abs(t), df);
  return finite({ difference, standardError, df, t, p, low: difference - half, high: difference + half });
}
