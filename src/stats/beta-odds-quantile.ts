import { betaTails } from "./beta-tails.ts";
import { normalQuantile } from "./normal-quantile.ts";
import { quantileFromTails, type Split } from "./quantile-from-tails.ts";

/**
 * The odds x / (1 - x) with the given probabilities below and above them, x being beta distributed with `a` and `b`.
 * Begun from the normal curve that the logarithm of the odds is close to, of variance about 1 / a + 1 / b.
 */
export function betaOddsQuantile(split: Split, a: number, b: number): number {
  // Stryker disable next-line EqualityOperator,UnaryOperator: Newton's rule leads from any start to the same value
  const z = split.lower < split.upper ? normalQuantile(split.lower) : -normalQuantile(split.upper);
  // Stryker disable next-line ArithmeticOperator: Newton's rule leads from any start to the same value
  const start = (a / b) * Math.exp(z * Math.sqrt(1 / a + 1 / b));
  return quantileFromTails((odds) => betaTails(odds, a, b), split, start);
}
