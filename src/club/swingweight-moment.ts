import { isProblem, type Outcome } from "../outcome/problem.ts";
import { pointsOfCode } from "./points-of-code.ts";
import { swingweightScale } from "./swingweight-scale.ts";

/**
 * The inch-ounces of a swingweight code on the 14-inch scale. Codes are case-insensitive and may have decimals.
 *
 * @example swingweightMoment("D0") // 213.5
 * @example swingweightMoment("d2.4") // 217.7
 */
export function swingweightMoment(code: string): Outcome<number> {
  const points = pointsOfCode(code);
  if (isProblem(points)) return points;
  return swingweightScale.lowest + points * swingweightScale.point;
}
