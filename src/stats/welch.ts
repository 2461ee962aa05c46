import { mean, sampleVariance } from "simple-statistics";
import { type Outcome, unavailable } from "../outcome/problem.ts";
import { confidenceProblem } from "./confidence-problem.ts";
import { finite } from "./finite.ts";
import { type Numbers, present } from "./present.ts";
import { tQuantile } from "./t-quantile.ts";
import { tUpperTail } from "./t-upper-tail.ts";

/** The difference of two means, the first minus the second, and how sure it is. */
export interface MeanDifference {
  /** Mean of the first group minus mean of the second: positive when the first is higher. */
  readonly difference: number;
  readonly standardError: number;
  readonly df: number;
  readonly t: number;
  /** Two-sided. */
  readonly p: number;
  readonly low: number;
  readonly high: number;
}

/**
 * The difference of two means without supposing that both groups spread alike: mean of `first` minus mean of
 * `second`, with limits (95 % unless told otherwise) by Welch's t and the degrees of freedom of Welch and
 * Satterthwaite (Welch 1947, Biometrika 34, 28-35). Needs two values in each group and some spread in one of them.
 *
 * Student's sleep data, the two drugs apart: difference -1.58, limits -3.365483 to 0.205483, p 0.079394.
 */
export function welch(first: Numbers, second: Numbers, confidence = 0.95): Outcome<MeanDifference> {
  const problem = confidenceProblem(confidence);
  if (problem) return problem;
  const a = present(first);
  const b = present(second);
  if (a.length < 2 || b.length < 2) {
    return unavailable(
      `A difference with limits needs at least two values in each group; there are ${a.length} and ${b.length}.`,
    );
  }
  const errorA = sampleVariance(a) / a.length;
  const errorB = sampleVariance(b) / b.length;
  const variance = errorA + errorB;
  if (variance === 0) {
    return unavailable("All values within each group are the same, so nothing tells how far the means vary.");
  }
  // As shares of the variance, so that very small or very large values do not overflow when squared.
  const df = 1 / ((errorA / variance) ** 2 / (a.length - 1) + (errorB / variance) ** 2 / (b.length - 1));
  const standardError = Math.sqrt(variance);
  const difference = mean(a) - mean(b);
  const t = difference / standardError;
  const half = tQuantile((1 + confidence) / 2, df) * standardError;
  return finite({
    difference,
    standardError,
    df,
    t,
    p: 2 * tUpperTail(Math.abs(t), df),
    low: difference - half,
    high: difference + half,
  });
}
