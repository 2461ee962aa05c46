/** Two unknowns that make a sum of squares least, and how well they are known. */
export interface TwoFit {
  readonly first: number;
  readonly second: number;
  /** Sum of squared residuals at the best place. */
  readonly squares: number;
  /** The inverse of J'J: times the residual variance, the covariance of the two. */
  readonly inverse: readonly [first: number, both: number, second: number];
}

type Residuals = (first: number, second: number) => Float64Array | undefined;

/** A step as short as this changes no figure of a flight by a tenth of a millimetre. */
const SETTLED = 1e-6;
const WIDTH = 1e-3;

/**
 * Nonlinear least squares in two unknowns by Levenberg and Marquardt, with slopes by central differences. `residuals`
 * answers nothing where it cannot be computed. Undefined when it does not settle or the two cannot be told apart.
 * Source: D. W. Marquardt, Journal of the Society for Industrial and Applied Mathematics 11 (1963) 431-441.
 */
export function fitTwo(residuals: Residuals, first: number, second: number): TwoFit | undefined {
  let [a, b] = [first, second];
  let now = residuals(a, b);
  let damping = 1e-3;
  // Stryker disable next-line all: most fits take ten rounds; the bound only keeps others from running on
  for (let round = 0; round < 60 && now; round += 1) {
    const slopes = slopesAt(residuals, a, b);
    if (!slopes) return undefined;
    const { aa, ab, bb, ra, rb } = normalEquations(slopes, now);
    let moved = 0;
    // Stryker disable next-line all: the same; twelve attempts make a step a million million times shorter
    for (let attempt = 0; attempt < 12; attempt += 1) {
      const [da, db] = [aa * (1 + damping), bb * (1 + damping)];
      const determinant = da * db - ab * ab;
      const stepA = (rb * ab - ra * db) / determinant;
      const stepB = (ra * ab - rb * da) / determinant;
      const step = Math.max(Math.abs(stepA), Math.abs(stepB));
      const next = residuals(a + stepA, b + stepB);
      damping *= 10;
      if (next && squaresOf(next) <= squaresOf(now)) {
        moved = step;
        [a, b, now] = [a + stepA, b + stepB, next];
        damping /= 100;
        break;
      }
      if (step < SETTLED) break;
    }
    if (moved < SETTLED) return settled(slopes, a, b, now);
  }
  return undefined;
}

function settled(slopes: Slopes, first: number, second: number, now: Float64Array): TwoFit | undefined {
  const { aa, ab, bb } = normalEquations(slopes, now);
  const determinant = aa * bb - ab * ab;
  if (!(determinant > 1e-6 * aa * bb)) return undefined;
  const inverse = [bb / determinant, -ab / determinant, aa / determinant] as const;
  return { first, second, squares: squaresOf(now), inverse };
}

/** How each residual goes with either unknown. */
interface Slopes {
  readonly byA: Float64Array;
  readonly byB: Float64Array;
}

function slopesAt(residuals: Residuals, a: number, b: number): Slopes | undefined {
  const byA = slope(residuals(a + WIDTH, b), residuals(a - WIDTH, b));
  const byB = slope(residuals(a, b + WIDTH), residuals(a, b - WIDTH));
  return byA && byB ? { byA, byB } : undefined;
}

function slope(above: Float64Array | undefined, below: Float64Array | undefined): Float64Array | undefined {
  return above && below && above.map((residual, index) => (residual - below[index]!) / (2 * WIDTH));
}

function normalEquations({ byA, byB }: Slopes, now: Float64Array) {
  const sums = { aa: 0, ab: 0, bb: 0, ra: 0, rb: 0 };
  now.forEach((residual, index) => {
    const [slopeA, slopeB] = [byA[index]!, byB[index]!];
    sums.aa += slopeA * slopeA;
    sums.ab += slopeA * slopeB;
    sums.bb += slopeB * slopeB;
    sums.ra += slopeA * residual;
    sums.rb += slopeB * residual;
  });
  return sums;
}

function squaresOf(residuals: Float64Array): number {
  return residuals.reduce((sum, residual) => sum + residual * residual, 0);
}
