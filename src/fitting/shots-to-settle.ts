import { isProblem } from "../outcome/problem.ts";
import { chanceBest } from "../stats/index.ts";
import type { GoalChances } from "./chances.ts";
import { FIRST_SHOTS } from "./next-build.ts";

/** More than these nobody hits in a session. */
const MOST = 40;

/** Builds less likely than this to be best are not worth more shots. */
const IN_THE_RUNNING = 0.05;

/** Which builds to hit more of, and how many more of each. */
export interface MoreShots {
  /** Null where even 40 each would not settle it: for this player these builds are as good as equal. */
  readonly each: number | null;
  readonly builds: readonly string[];
}

/**
 * How many more shots of each build still in the running would bring the best one's chance up to `chance`, if
 * averages and spreads stay as they are. At least as many as any build needs before its average says much: one or two
 * shots that lie close together would else promise the choice by the next one.
 */
export function shotsToSettle({ builds, better, spread }: GoalChances, chance: number): MoreShots {
  const ranked = [...builds].sort((a, b) => b.chance - a.chance);
  const running = ranked.filter((one, place) => place < 2 || one.chance >= IN_THE_RUNNING);
  const best = builds.indexOf(ranked[0]!);
  const reached = (more: number) => {
    const groups = builds.map((one) => ({
      n: one.n + (running.includes(one) ? more : 0),
      mean: one.mean,
      sd: one.sd ?? (running.includes(one) ? (ranked.find(({ sd }) => sd !== null)?.sd ?? null) : null),
    }));
    const chances = chanceBest(groups, better, spread);
    return !isProblem(chances) && chances[best]! >= chance;
  };
  const names = running.map(({ build }) => build);
  if (!reached(MOST)) return { each: null, builds: names };
  const fewest = Math.min(...running.map(({ n }) => n));
  let [tooFew, enough] = [Math.max(0, FIRST_SHOTS - fewest - 1), MOST];
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (reached(middle)) enough = middle;
    else tooFew = middle;
  }
  return { each: enough, builds: names };
}
