import { mean, median } from "simple-statistics";
import { type Outcome, unavailable } from "../outcome/problem.ts";
import { confidenceProblem } from "./confidence-problem.ts";
import { finite } from "./finite.ts";
import { type Numbers, present } from "./present.ts";
import { tQuantile } from "./t-quantile.ts";

/** What one column of one build comes to. */
export interface Summary {
  readonly n: number;
  readonly mean: number;
  /** Sample standard deviation, n - 1; null for a single value, which has no spread to speak of. */
  readonly sd: number | null;
  /** Limits of the mean by Student's t; null where `sd` is. */
  readonly low: number | null;
  readonly high: number | null;
  /** The middle value, or the mean of the middle two. */
  readonly median: number;
  readonly least: number;
  readonly greatest: number;
}

/**
 * Count, mean, spread, limits of the mean (95 % unless told otherwise), median, least and greatest of the values
 * that are there. With no value there is no summary; with one there is no spread and there are no limits.
 *
 * The sums are compensated and the spread is taken in two passes, mean first, as the certified sets of the NIST
 * Statistical Reference Datasets (Univariate Summary Statistics) demand.
 *
 * `summary([10000001, 10000003, 10000002])` has mean 10000002 and sd 1 (NIST, NumAcc1).
 */
export function summary(values: Numbers, confidence = 0.95): Outcome<Summary> {
  const problem = confidenceProblem(confidence);
  if (problem) return problem;
  const there = present(values);
  const n = there.length;
  if (n === 0) return unavailable("There are no values to summarise; at least one number is needed.");
  const centre = mean(there);
  let least = there[0]!;
  let greatest = least;
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const value = there[i]!;
    least = Math.min(least, value);
    greatest = Math.max(greatest, value);
    squares += (value - centre) * (value - centre);
  }
  const sd = n > 1 ? Math.sqrt(squares / (n - 1)) : null;
  const half = sd === null ? null : (tQuantile((1 + confidence) / 2, n - 1) * sd) / Math.sqrt(n);
  return finite({
    n,
    mean: centre,
    sd,
    low: half === null ? null : centre - half,
    high: half === null ? null : centre + half,
    median: median(there),
    least,
    greatest,
  });
}
