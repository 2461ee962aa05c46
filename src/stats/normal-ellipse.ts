import { type Outcome, unavailable } from "../outcome/problem.ts";
import { chiSquareQuantile } from "./chi-square-quantile.ts";
import { confidenceProblem } from "./confidence-problem.ts";
import { covarianceOf, presentPoints } from "./covariance-of.ts";
import { type Ellipse, ellipseAround } from "./ellipse.ts";
import { fQuantile } from "./f-quantile.ts";
import { finite } from "./finite.ts";
import type { Numbers } from "./present.ts";

/**
 * The ellipse that holds a share of the shots (95 % unless told otherwise) of a normal group, in one of two forms:
 *
 * - "group" (the default): the group as drawn by its own centre and covariance, to the chi-square quantile with two
 *   degrees of freedom, 5.99 at 95 %. A picture of the shots at hand.
 * - "next": where the next shot falls with that probability when centre and covariance are only estimated from n
 *   shots: 2 (n + 1) (n - 1) / (n (n - 2)) times the F quantile with 2 and n - 2 degrees of freedom. Much wider
 *   for few shots (Johnson and Wichern 2007, Applied Multivariate Statistical Analysis, section 5.4; Chew 1966,
 *   JASA 61, 605-617).
 *
 * Needs three points with both coordinates.
 */
export function normalEllipse(
  x: Numbers,
  y: Numbers,
  share = 0.95,
  form: "group" | "next" = "group",
): Outcome<Ellipse> {
  const problem = confidenceProblem(share, "share");
  if (problem) return problem;
  const points = presentPoints(x, y);
  const n = points.length;
  if (n < 3) return unavailable(`An ellipse needs at least three shots with both figures; there are ${n}.`);
  const scale =
    form === "group"
      ? chiSquareQuantile(share, 2)
      : ((2 * (n + 1) * (n - 1)) / (n * (n - 2))) * fQuantile(share, 2, n - 2);
  return finite(ellipseAround(covarianceOf(points), scale));
}
