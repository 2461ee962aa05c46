import { isProblem } from "../outcome/problem.ts";
import { chanceBest } from "../stats/index.ts";
import type { BuildChance, GoalChances } from "./chances.ts";

/** More than these nobody hits in a session. */
const MOST = 40;

/**
 * How many more shots of each of two builds would make the better one's chance, between the two, reach `chance`, if
 * averages and spreads stay as they are. Null where even 40 would not: for this player the two are as good as equal.
 */
export function shotsToSettle(
  best: BuildChance,
  other: BuildChance,
  { better, spread }: GoalChances,
  chance: number,
): number | null {
  const reached = (more: number) => {
    const groups = [best, other].map(({ n, mean, sd }) => ({
      n: n + more,
      mean,
      sd: sd ?? best.sd ?? other.sd,
    }));
    const chances = chanceBest(groups, better, spread);
    return !isProblem(chances) && chances[0]! >= chance;
  };
  if (!reached(MOST)) return null;
  let [tooFew, enough] = [0, MOST];
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (reached(middle)) enough = middle;
    else tooFew = middle;
  }
  return enough;
}
