import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { Goal } from "../stats/index.ts";
import { groupOf } from "./chances.ts";
import { nextBuild } from "./next-build.ts";
import { shotsByBuild } from "./shots-by-build.ts";

/** The answer of NEXTBUILD: the name of the build to hit next. Near a number, the distance from it is what counts. */
export function nextOfLists(
  builds: readonly string[],
  values: readonly number[],
  goal: Goal,
): Outcome<[[string]]> {
  const lists = shotsByBuild(builds, values);
  if (isProblem(lists)) return lists;
  const candidates = lists.map(({ figures }) => {
    const { n, mean, sd } = groupOf(figures);
    return { n, sd, mean: typeof goal === "number" ? Math.abs(mean - goal) : mean };
  });
  const next = nextBuild(candidates, goal === "high" ? "high" : "low");
  return isProblem(next) ? next : [[lists[next]!.build]];
}
