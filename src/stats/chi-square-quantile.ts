import { gammaTails } from "./gamma-tails.ts";
import { normalQuantile } from "./normal-quantile.ts";
import { quantileFromTails } from "./quantile-from-tails.ts";

/**
 * The value chi-square stays below with probability `p`; callers have checked 0 < p < 1 and df > 0. Half of it is
 * gamma distributed, and begun from the normal curve that its logarithm is close to.
 *
 * `chiSquareQuantile(0.95, 2)` is -2 log 0.05.
 */
export function chiSquareQuantile(p: number, df: number): number {
  const shape = df / 2;
  const start = shape * Math.exp(normalQuantile(p) / Math.sqrt(shape));
  // Stryker disable next-line ArithmeticOperator: from the lower tail alone it takes more steps to the same value
  return 2 * quantileFromTails((x) => gammaTails(x, shape), { lower: p, upper: 1 - p }, start);
}
