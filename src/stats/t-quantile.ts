import quantile from "@stdlib/stats-base-dists-t-quantile";

/**
 * The value Student's t stays below with probability `p`. Degrees of freedom need not be whole (Welch's are not).
 * For the parts of this folder that have checked 0 < p < 1 and df > 0.
 *
 * `tQuantile(0.975, 9)` is 2.262157..., the factor of 95 % limits for ten shots.
 */
export function tQuantile(p: number, df: number): number {
  return quantile(p, df);
}
