import { invalid, type Outcome } from "../outcome/problem.ts";
import { confidenceProblem } from "./confidence-problem.ts";
import { finite } from "./finite.ts";
import { integrate } from "./integrate.ts";
import { normalQuantile } from "./normal-quantile.ts";
import { normalUpperTail } from "./normal-upper-tail.ts";
import { solveRising } from "./solve-rising.ts";

/**
 * How many shots each of `k` builds needs so that the one with the highest mean is truly the best with the stated
 * probability, whenever the best is at least `delta` ahead of the next (Bechhofer 1954, Annals of Mathematical
 * Statistics 25, 16-39). `sd` is the spread of one build's shots, taken as known and shared.
 *
 * `bechhoferShots(8, 5, 4, 0.9)` is 16: 2.4515694 (8 / 5) squared is 15.4.
 */
export function bechhoferShots(sd: number, delta: number, k: number, probability: number): Outcome<number> {
  const problem = confidenceProblem(probability, "probability");
  if (problem) return problem;
  if (!(sd > 0)) return invalid(`sd is ${sd}; it must be a number greater than 0.`);
  if (!(delta > 0)) return invalid(`delta is ${delta}; it must be a number greater than 0.`);
  if (!(Number.isInteger(k) && k > 1 && k <= 1000)) {
    return invalid(`k is ${k}; it must be a whole number of builds from 2 to 1000.`);
  }
  return finite(Math.max(1, Math.ceil(((bechhoferFactor(k, probability) * sd) / delta) ** 2)));
}

/**
 * Bechhofer's constant: sqrt(n) delta / sigma. The right build is chosen when its mean beats k - 1 others that are
 * all this far behind, which is the average of Phi(x + h)^(k - 1) over a standard normal x. At most 1 / k, which
 * guessing gives, needs no lead at all: 0. For callers that have checked the arguments.
 */
export function bechhoferFactor(k: number, probability: number): number {
  if (probability <= 1 / k) return 0;
  // Bonferroni's lead for all others is never too small.
  // Stryker disable next-line ArithmeticOperator: where the search ends if it is not found before, which it always is
  const bonferroni = -Math.SQRT2 * normalQuantile((1 - probability) / (k - 1));
  // As the chance of a wrong choice, whose logarithm is nearly straight.
  const value = -Math.log(1 - probability);
  return solveRising((h) => -Math.log(chanceWrong(k, h)), value, 0, bonferroni);
}

function chanceWrong(k: number, h: number): number {
  const wrong = (x: number) => {
    const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
    return [-density * Math.expm1((k - 1) * Math.log1p(-normalUpperTail(x + h)))];
  };
  return integrate(wrong, [-9, 9], 1e-12)[0]!;
}
