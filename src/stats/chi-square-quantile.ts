import quantile from "@stdlib/stats-base-dists-chisquare-quantile";

/** The value chi-square stays below with probability `p`; callers have checked 0 < p < 1 and df > 0. */
export function chiSquareQuantile(p: number, df: number): number {
  return quantile(p, df);
}
