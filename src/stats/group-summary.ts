import { mean, median } from "simple-statistics";
import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { covarianceOf, presentPoints } from "./covariance-of.ts";
import type { Ellipse } from "./ellipse.ts";
import { farthestApart } from "./farthest-apart.ts";
import { finite } from "./finite.ts";
import { normalEllipse } from "./normal-ellipse.ts";
import type { Numbers } from "./present.ts";

/** The group a build makes on the ground: where it lies and how tight it is, all in one unit. */
export interface GroupSummary {
  /** Shots with both carry and offline. */
  readonly n: number;
  readonly carryMean: number;
  /** Positive to the right, as everywhere. */
  readonly offlineMean: number;
  /** n - 1; these and the radii are null for a single shot. */
  readonly carrySd: number | null;
  readonly offlineSd: number | null;
  /** Mean distance of the shots from the group's own centre. */
  readonly meanRadius: number | null;
  /** The radius about the centre that holds half of the shots: the median distance. */
  readonly halfRadius: number | null;
  /** Distance of the two shots that lie farthest apart. */
  readonly extremeSpread: number | null;
  /**
   * Holds 95 % of the shots of a normal group (`normalEllipse`); null below three shots. x is carry and y offline,
   * so its angle runs from the target line to the right.
   */
  readonly ellipse: Ellipse | null;
}

/**
 * Where a group of shots lies and how tight it is. Radii are about the group's own centre, as shot groups are
 * measured in precision shooting (Grubbs 1964, Statistical Measures of Accuracy for Riflemen and Missile Engineers);
 * they tend to come out small for few shots: for a round group of true spread s the mean radius expects
 * 1.2533 s sqrt((n - 1) / n). Shots of which carry or offline is missing are left out.
 */
export function groupSummary(carry: Numbers, offline: Numbers): Outcome<GroupSummary> {
  const points = presentPoints(carry, offline);
  if (points.length === 0) return unavailable("No shot has both carry and offline; at least one is needed.");
  const { n, meanX, meanY, varianceX, varianceY } = covarianceOf(points);
  const radii = points.map(([x, y]) => Math.hypot(x - meanX, y - meanY));
  const ellipse = normalEllipse(carry, offline);
  const ifSeveral = (figure: number) => (n > 1 ? figure : null);
  return finite({
    n,
    carryMean: meanX,
    offlineMean: meanY,
    carrySd: ifSeveral(Math.sqrt(varianceX)),
    offlineSd: ifSeveral(Math.sqrt(varianceY)),
    meanRadius: ifSeveral(mean(radii)),
    halfRadius: ifSeveral(median(radii)),
    extremeSpread: ifSeveral(farthestApart(points)),
    ellipse: isProblem(ellipse) ? null : ellipse,
  });
}
