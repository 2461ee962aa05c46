import cdf from "@stdlib/stats-base-dists-normal-cdf";

/**
 * The probability that a standard normal value exceeds `z`. By symmetry it is the lower tail at -z, which the
 * library takes from the complementary error function, so small tails keep their digits.
 *
 * `normalUpperTail(6)` is 9.8658764503769814e-10.
 */
export function normalUpperTail(z: number): number {
  return cdf(-z, 0, 1);
}
