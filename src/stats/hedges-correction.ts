import { logExcess } from "./log-excess.ts";
import { stirlingError } from "./stirling-error.ts";

/**
 * The exact correction of an effect size for few values, gamma(m / 2) / (sqrt(m / 2) gamma((m - 1) / 2)) for m
 * degrees of freedom, 2 or more (Hedges 1981, Journal of Educational Statistics 6, 107-128). Both gammas are
 * written with Stirling's formula, of which only the small errors are left.
 *
 * `hedgesCorrection(2)` is 1 / sqrt(pi) = 0.5641895835477563.
 */
export function hedgesCorrection(df: number): number {
  const z = df / 2;
  const u = -0.5 / z;
  return (1 + u) * Math.exp(stirlingError(z) - stirlingError(z - 0.5) + z * logExcess(u));
}
