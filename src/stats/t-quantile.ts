import { betaOddsQuantile } from "./beta-odds-quantile.ts";

/**
 * The value Student's t stays below with probability `p`. Degrees of freedom need not be whole (Welch's are not).
 * For the parts of this folder that have checked 0 < p < 1 and df > 0. The square of t over its degrees of freedom
 * is the odds of a beta value (Abramowitz and Stegun 1964, 26.7.1 and 26.5.27).
 *
 * `tQuantile(0.975, 9)` is 2.262157..., the factor of 95 % limits for ten shots.
 */
export function tQuantile(p: number, df: number): number {
  if (p === 0.5) return 0;
  const tail = Math.min(p, 1 - p);
  // Stryker disable next-line ArithmeticOperator: from the upper tail alone it takes more steps to the same value
  const split = { lower: 2 * (0.5 - tail), upper: 2 * tail };
  const size = Math.sqrt(df * betaOddsQuantile(split, 0.5, df / 2));
  return Math.sign(p - 0.5) * size;
}
