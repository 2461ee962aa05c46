import quantile from "@stdlib/stats-base-dists-f-quantile";

/**
 * The value Fisher's F stays below with probability `p`. For callers that have checked 0 < p < 1 and both degrees
 * of freedom > 0. `fQuantile(0.95, 2, 8)` is 4.458970...
 */
export function fQuantile(p: number, dfAbove: number, dfBelow: number): number {
  return quantile(p, dfAbove, dfBelow);
}
