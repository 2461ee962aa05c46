import { invalid, type Outcome, unavailable } from "../outcome/problem.ts";
import { confidenceProblem } from "./confidence-problem.ts";
import { noncentralTUpperTail } from "./noncentral-t-upper-tail.ts";
import { tQuantile } from "./t-quantile.ts";

/**
 * How many shots each of two builds needs so that a true difference of this size is told apart with the stated
 * power, by a two-sided t test on equal groups that share one spread. The least whole number, from the exact
 * noncentral t (Cohen 1988, Statistical Power Analysis for the Behavioral Sciences, chapter 2). `sd` is the spread
 * of one build's shots, `difference` is in the same unit; its sign does not matter. Never below two.
 *
 * `shotsNeeded(1, 0.8)` is 26, Cohen's figure for a large effect.
 */
export function shotsNeeded(sd: number, difference: number, power = 0.8, confidence = 0.95): Outcome<number> {
  const problem = confidenceProblem(power, "power") ?? confidenceProblem(confidence);
  if (problem) return problem;
  if (!(sd > 0 && Number.isFinite(sd))) return invalid(`sd is ${sd}; it must be a number greater than 0.`);
  const effect = Math.abs(difference) / sd;
  if (!(effect > 0 && Number.isFinite(effect))) {
    return invalid(`difference is ${difference}; it must be a number other than 0.`);
  }
  let enough = 2;
  // Stryker disable next-line EqualityOperator: no power is met exactly
  while (powerOfTwo(enough, effect, confidence) < power) {
    if (enough === mostShots)
      return unavailable(`More than ${mostShots} shots of each build would be needed.`);
    enough *= 2;
  }
  let tooFew = enough / 2;
  while (enough - tooFew > 1) {
    const middle = Math.floor((enough + tooFew) / 2);
    // Stryker disable next-line EqualityOperator: no power is met exactly
    if (powerOfTwo(middle, effect, confidence) < power) tooFew = middle;
    else enough = middle;
  }
  return enough;
}

/**
 * The chance that a two-sided t test on two groups of `n` finds a true difference of `effect` spreads, and on the
 * right side. For callers that have checked n > 1; n need not be whole.
 *
 * `powerOfTwo(20, 1)` is 0.8689528...
 */
export function powerOfTwo(n: number, effect: number, confidence = 0.95): number {
  const df = 2 * n - 2;
  return noncentralTUpperTail(tQuantile((1 + confidence) / 2, df), df, effect * Math.sqrt(n / 2));
}

const mostShots = 2 ** 19;
