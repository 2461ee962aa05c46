import { betaTails } from "./beta-tails.ts";

/**
 * The probability that Fisher's F exceeds `f`, straight from the upper tail by the incomplete beta function
 * (Abramowitz and Stegun 1964, 26.6.2), never as 1 - cdf. For callers that have checked f >= 0 and both degrees
 * of freedom > 0; they need not be whole (Welch's analysis of variance has fractional ones).
 *
 * `fUpperTail(119.264501799318, 2, 147)` is 1.6697e-31.
 */
export function fUpperTail(f: number, dfAbove: number, dfBelow: number): number {
  return Math.exp(betaTails((dfAbove * f) / dfBelow, dfAbove / 2, dfBelow / 2).logUpper);
}
