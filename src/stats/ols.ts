import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { Numbers } from "./present.ts";
import { type Coefficient, regression } from "./regression.ts";

/** A straight line through points. */
export interface Line {
  readonly n: number;
  readonly df: number;
  readonly residualSd: number;
  readonly rSquared: number;
  readonly intercept: Coefficient;
  /** Change of y for one more of x. */
  readonly slope: Coefficient;
}

/**
 * The straight line that `y` follows on `x`, by least squares, with limits and probabilities: `regression` on one
 * column. Needs three points, not all at the same x.
 */
export function ols(x: Numbers, y: Numbers, confidence = 0.95): Outcome<Line> {
  const fit = regression(y, [x], confidence);
  if (isProblem(fit)) return fit;
  const { slopes, ...line } = fit;
  return { ...line, slope: slopes[0]! };
}
