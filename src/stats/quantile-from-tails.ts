import type { Tails } from "./tails.ts";

/** Probabilities below and above the wanted value; they add up to 1, and the smaller carries the digits. */
export interface Split {
  readonly lower: number;
  readonly upper: number;
}

/**
 * The value of a positive variable with the given probabilities below and above it, to full double precision.
 * Newton's rule on the logarithm of the smaller tail against the logarithm of the variable. Where the density
 * against that logarithm is log-concave, as for gamma and for odds of beta, so are both tails (Prekopa 1973, Acta
 * Scientiarum Mathematicarum 34, 335-343), and Newton's rule then closes in from one side from wherever it starts.
 */
export function quantileFromTails(
  tailsAt: (x: number) => Tails,
  { lower, upper }: Split,
  start: number,
): number {
  // Stryker disable next-line EqualityOperator: of two halves either will do
  const rising = lower <= upper;
  const wanted = Math.log(rising ? lower : upper);
  let x = start;
  // Stryker disable next-line EqualityOperator,UpdateOperator: a bound that Newton's rule never comes to
  for (let i = 0; i < 200; i++) {
    const tails = tailsAt(x);
    const tail = rising ? tails.logLower : tails.logUpper;
    const short = rising ? wanted - tail : tail - wanted;
    const step = short * Math.exp(tail - tails.logHeight);
    x *= Math.exp(Math.max(-LONGEST, Math.min(LONGEST, step)));
    // Newton's rule doubles the digits: a step this short leaves nothing to correct. One of NaN never will.
    // Stryker disable next-line EqualityOperator: one step more corrects nothing either
    if (!(Math.abs(step) >= 1e-9) || x === 0 || x === Infinity) break;
  }
  return x;
}

/** Keeps the first steps from leaving the range of double precision. */
const LONGEST = 50;
