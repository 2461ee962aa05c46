import { dunnettUpperTail } from "./dunnett-upper-tail.ts";
import { normalQuantile } from "./normal-quantile.ts";
import { solveRising } from "./solve-rising.ts";
import { tQuantile } from "./t-quantile.ts";

/**
 * The factor of Dunnett's two-sided limits: how many standard errors either side of the differences from a baseline
 * hold all of them at once with the stated confidence. Sizes as in `dunnettUpperTail`; df may be Infinity.
 *
 * `dunnettFactor([5, 5], 5, 10, 0.95)` is 2.57 in the table of Dunnett 1964.
 *
 * The factor depends on sizes and confidence alone, and a table of shots asks for the same one for every metric, so
 * answers are kept.
 */
export function dunnettFactor(
  sizes: readonly number[],
  baselineSize: number,
  df: number,
  confidence: number,
): number {
  // Stryker disable all: a factor worked out afresh is the same factor
  const key = `${[...sizes].sort((a, b) => a - b)} ${baselineSize} ${df} ${confidence}`;
  const known = factors.get(key);
  if (known !== undefined) return known;
  // Stryker restore all
  // Between the factor of one comparison and Bonferroni's for all of them.
  const quantile = (tail: number) => (df === Infinity ? -normalQuantile(tail) : -tQuantile(tail, df));
  // Stryker disable next-line ArithmeticOperator: only where the search begins
  const alone = quantile((1 - confidence) / 2);
  // Stryker disable next-line ArithmeticOperator: where the search ends if it is not found before, which it always is
  const bonferroni = quantile((1 - confidence) / 2 / sizes.length);
  // In logarithms the tail is nearly straight, so few steps are needed.
  const logTail = (t: number) => -Math.log(dunnettUpperTail(t, sizes, baselineSize, df));
  const factor = solveRising(logTail, -Math.log(1 - confidence), alone, bonferroni);
  // Stryker disable next-line all: a factor worked out afresh is the same factor
  if (factors.size > 1000) factors.clear();
  factors.set(key, factor);
  return factor;
}

const factors = new Map<string, number>();
