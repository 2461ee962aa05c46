import { type Outcome, unavailable } from "../outcome/problem.ts";
import { confidenceProblem } from "./confidence-problem.ts";
import { covarianceOf, presentPoints } from "./covariance-of.ts";
import { type Ellipse, ellipseAround } from "./ellipse.ts";
import { fQuantile } from "./f-quantile.ts";
import { fUpperTail } from "./f-upper-tail.ts";
import { finite } from "./finite.ts";
import type { Numbers } from "./present.ts";

/** How far a group's centre lies from a point, counted in how sure the centre is. */
export interface Hotelling {
  readonly n: number;
  readonly tSquared: number;
  readonly f: number;
  readonly df: readonly [number, number];
  readonly p: number;
}

/**
 * The limits of a group's true centre: the ellipse that holds it with the stated confidence (95 % unless told
 * otherwise), by Hotelling's T squared, exact for few shots of a normal group (Hotelling 1931; Johnson and Wichern
 * 2007, section 5.4). Half axes are 2 (n - 1) / (n (n - 2)) times the F quantile with 2 and n - 2 degrees of
 * freedom, times the eigenvalues, rooted. Needs three points.
 */
export function hotellingEllipse(x: Numbers, y: Numbers, confidence = 0.95): Outcome<Ellipse> {
  const problem = confidenceProblem(confidence);
  if (problem) return problem;
  const points = presentPoints(x, y);
  const n = points.length;
  if (n < 3)
    return unavailable(`Limits of a centre need at least three shots with both figures; there are ${n}.`);
  const tSquared = ((2 * (n - 1)) / (n - 2)) * fQuantile(confidence, 2, n - 2);
  return finite(ellipseAround(covarianceOf(points), tSquared / n));
}

/**
 * Whether a group's true centre may be a given point: Hotelling's T squared against (`atX`, `atY`), with its upper
 * tail. Against the target line it answers whether a group is biased to a side. Needs three points that do not lie
 * on one line.
 */
export function hotellingTest(x: Numbers, y: Numbers, atX: number, atY: number): Outcome<Hotelling> {
  const points = presentPoints(x, y);
  const n = points.length;
  if (n < 3)
    return unavailable(`A test of a centre needs at least three shots with both figures; there are ${n}.`);
  const { meanX, meanY, varianceX, varianceY, covariance } = covarianceOf(points);
  const determinant = varianceX * varianceY - covariance ** 2;
  // A cloud flatter than rounding can tell from a line has no inverse.
  if (!(determinant > 1e-14 * varianceX * varianceY)) {
    return unavailable("The shots lie on one line, so nothing measures chance across it.");
  }
  const dx = meanX - atX;
  const dy = meanY - atY;
  const tSquared = (n * (varianceY * dx * dx - 2 * covariance * dx * dy + varianceX * dy * dy)) / determinant;
  const f = (tSquared * (n - 2)) / (2 * (n - 1));
  return finite({ n, tSquared, f, df: [2, n - 2] as const, p: fUpperTail(f, 2, n - 2) });
}
