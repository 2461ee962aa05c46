import { isProblem, type Outcome } from "../outcome/problem.ts";
import { pointsOfCode } from "./points-of-code.ts";
import { withoutDust } from "./without-dust.ts";

/**
 * Points from one swingweight code to another, positive when the second is heavier in the head.
 *
 * @example swingweightDifference("C9", "D2") // 3
 */
export function swingweightDifference(from: string, to: string): Outcome<number> {
  const start = pointsOfCode(from);
  if (isProblem(start)) return start;
  const end = pointsOfCode(to);
  if (isProblem(end)) return end;
  return withoutDust(end - start);
}
