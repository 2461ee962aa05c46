import { betaTails } from "./beta-tails.ts";

/**
 * The probability that Student's t exceeds `t`. The upper tail comes straight from the incomplete beta function
 * (Abramowitz and Stegun 1964, 26.7.1 and 26.5.27), never as 1 - cdf, so that 1e-30 stays 1e-30 and does not round
 * to nothing. For the parts of this folder that have checked df > 0; df need not be whole.
 *
 * `2 * tUpperTail(12.62059, 326)` is 5.273e-30, a two-sided p.
 */
export function tUpperTail(t: number, df: number): number {
  const tail = Math.exp(betaTails((t * t) / df, 0.5, df / 2).logUpper) / 2;
  // Stryker disable next-line EqualityOperator: at nought both are a half
  return t < 0 ? 1 - tail : tail;
}
