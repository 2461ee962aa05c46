import { betaOddsQuantile } from "./beta-odds-quantile.ts";

/**
 * The value Fisher's F stays below with probability `p`. For callers that have checked 0 < p < 1 and both degrees
 * of freedom > 0. `fQuantile(0.95, 2, 8)` is 4.458970...
 */
export function fQuantile(p: number, dfAbove: number, dfBelow: number): number {
  // Stryker disable next-line ArithmeticOperator: from the lower tail alone it takes more steps to the same value
  const odds = betaOddsQuantile({ lower: p, upper: 1 - p }, dfAbove / 2, dfBelow / 2);
  return (dfBelow / dfAbove) * odds;
}
