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

/**
 * Nonlinear least squares in two unknowns by Levenberg and Marquardt, with slopes by central differences. `residuals`
 * answers nothing where it cannot be computed. Undefined when it does not settle or the two cannot be told apart.
 * Source: D. W. Marquardt, Journal of the Society for Industrial and Applied Mathematics 11 (1963) 431-441.
 */
export function fitTwo(residuals: Residuals, first: number, second: number): TwoFit | undefined {
  let [a, b] = [first, second];
  let now = residuals(a, b);
  let damping = 1e-3;
  for (let round = 0; round < 60 && now; round += 1) {
    const normal = normalEquations(residuals, a, b, now);
    if (!normal) return undefined;
    const { aa, ab, bb, ra, rb } = normal;
    let moved = Number.POSITIVE_INFINITY;
    for (let attempt = 0; attempt < 12; attempt += 1) {
      const [da, db] = [aa * (1 + damping), bb * (1 + damping)];
      const determinant = da * db - ab * ab;
      const stepA = (rb * ab - ra * db) / determinant;
      const stepB = (ra * ab - rb * da) / determinant;
      const next = residuals(a + stepA, b + stepB);
      damping *= 10;
      if (!next || !(squaresOf(next) <= squaresOf(now))) continue;
      moved = Math.max(Math.abs(stepA), Math.abs(stepB));
      [a, b, now] = [a + stepA, b + stepB, next];
      damping /= 100;
      break;
    }
    if (moved < 1e-7 || moved === Number.POSITIVE_INFINITY) return finish(residuals, a, b, now);
  }
  return undefined;
}

function finish(residuals: Residuals, a: number, b: number, now: Float64Array): TwoFit | undefined {
  const normal = normalEquations(residuals, a, b, now);
  if (!normal) return undefined;
  const { aa, ab, bb } = normal;
  const determinant = aa * bb - ab * ab;
  if (!(determinant > 1e-6 * aa * bb)) return undefined;
  const inverse = [bb / determinant, -ab / determinant, aa / determinant] as const;
  return { first: a, second: b, squares: squaresOf(now), inverse };
}

function normalEquations(residuals: Residuals, a: number, b: number, now: Float64Array) {
  const width = 1e-3;
  const [a1, a0] = [residuals(a + width, b), residuals(a - width, b)];
  const [b1, b0] = [residuals(a, b + width), residuals(a, b - width)];
  if (!a1 || !a0 || !b1 || !b0) return undefined;
  const sums = { aa: 0, ab: 0, bb: 0, ra: 0, rb: 0 };
  now.forEach((residual, index) => {
    const byA = (a1[index]! - a0[index]!) / (2 * width);
    const byB = (b1[index]! - b0[index]!) / (2 * width);
    sums.aa += byA * byA;
    sums.ab += byA * byB;
    sums.bb += byB * byB;
    sums.ra += byA * residual;
    sums.rb += byB * residual;
  });
  return sums;
}

function squaresOf(residuals: Float64Array): number {
  return residuals.reduce((sum, residual) => sum + residual * residual, 0);
}
