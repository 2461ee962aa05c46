import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { checkNumber } from "./check-number.ts";
import { gramsPerOunce } from "./exact-units.ts";
import { finite } from "./finite.ts";
import { swingweightMoment } from "./swingweight-moment.ts";
import { swingweightScale } from "./swingweight-scale.ts";

/**
 * Grams to put at a position (inches from the butt) to take a club from one swingweight code to another; negative:
 * grams to take off. On the butt side of 14 inches the signs turn round, and at 14 inches no weight does anything.
 *
 * @example weightToAdd("D0", "D2", 44) // 3.31: 3.5 in-oz over 30 in, in grams
 */
export function weightToAdd(from: string, to: string, position: number): Outcome<number> {
  const start = swingweightMoment(from);
  if (isProblem(start)) return start;
  const end = swingweightMoment(to);
  if (isProblem(end)) return end;
  const problem = checkNumber(position, { name: "position", unit: "inches from the butt", least: 0 });
  if (problem) return problem;
  if (position === swingweightScale.fulcrum) {
    return unavailable("position is 14, the scale's own fulcrum; weight there changes no swingweight.");
  }
  return finite(((end - start) * gramsPerOunce) / (position - swingweightScale.fulcrum));
}
