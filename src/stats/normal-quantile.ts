import quantile from "@stdlib/stats-base-dists-normal-quantile";

/** The value a standard normal stays below with probability `p`; callers have checked 0 < p < 1. */
export function normalQuantile(p: number): number {
  return quantile(p, 0, 1);
}
