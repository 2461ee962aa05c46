import { sum } from "simple-statistics";
import { averageOverSpread } from "./average-over-spread.ts";
import { normalUpperTail } from "./normal-upper-tail.ts";
import { tUpperTail } from "./t-upper-tail.ts";

/**
 * The probability that, when no group differs from the baseline, the largest |t| among them still exceeds `t`.
 * Groups of the given sizes share one spread, estimated with `df` degrees of freedom (may be Infinity), and one
 * baseline group.
 *
 * All differences share the baseline's own error, so their correlation is a product, b_i b_j with
 * b_i^2 = n_i / (n_i + n_0). Given that error z and the spread u they are independent, which leaves two integrals
 * (Dunnett 1955, section 3; Dunnett and Sobel 1955, Biometrika 42, 258-260). The chance of any exceeding is summed
 * as such, by log1p and expm1, and not taken as 1 minus the chance of none, so small probabilities keep their digits.
 */
export function dunnettUpperTail(
  t: number,
  sizes: readonly number[],
  baselineSize: number,
  df: number,
): number {
  if (sizes.length === 1) return 2 * (df === Infinity ? normalUpperTail(t) : tUpperTail(t, df));
  const points = baselinePoints(sum(sizes.map((size) => size / baselineSize)));
  const groups = sizes.map((size) => ({
    loading: Math.sqrt(size / baselineSize),
    stretch: Math.sqrt(1 + size / baselineSize),
  }));
  const given = (reach: number) => {
    let chance = 0;
    for (const { z, weight } of points) {
      let logNone = 0;
      for (const { loading, stretch } of groups) {
        const above = normalUpperTail(reach * stretch - loading * z);
        const below = normalUpperTail(reach * stretch + loading * z);
        logNone += Math.log1p(-Math.min(1, above + below));
      }
      chance -= weight * Math.expm1(logNone);
    }
    return chance;
  };
  const chance = df === Infinity ? given(t) : averageOverSpread(df, (u) => [given(t * u)], 1e-9)[0]!;
  return Math.min(1, chance);
}

/**
 * Points and weights for the average over the baseline's error, a standard normal z. The integrand is even and
 * entire, and the trapezoidal rule then converges geometrically (Trefethen and Weideman 2014, SIAM Review 56,
 * 385-458): shifted by iy into the complex plane it grows at most as exp(y^2 (1 + ratios) / 2), `ratios` being the
 * group sizes over the baseline's, summed; so this step leaves an error of e^-34. Beyond 9 lies 2e-19 of a normal.
 */
function baselinePoints(ratios: number): { z: number; weight: number }[] {
  const step = Math.PI * Math.sqrt(2 / (34 * (1 + ratios)));
  // Stryker disable next-line ArithmeticOperator: the last points weigh less than 1e-17
  return Array.from({ length: Math.ceil(9 / step) + 1 }, (_, i) => {
    const z = i * step;
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    return { z, weight: (i === 0 ? 1 : 2) * step * density };
  });
}
