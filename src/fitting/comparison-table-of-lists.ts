import { invalid, isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { chanceBest, compareWithBaseline, type Goal, sharedSpread } from "../stats/index.ts";
import { groupOf } from "./chances.ts";
import { shotsByBuild } from "./shots-by-build.ts";

const HEADINGS = [
  "Build",
  "n",
  "Mean",
  "SD",
  "Difference",
  "Low 95 %",
  "High 95 %",
  "p",
  "Chance of being best",
];

/**
 * The answer of COMPARE: a row a build under headings. Differences are build less baseline, with limits and p that
 * hold for all builds together (compareWithBaseline says which method and why); chances come from chanceBest. What
 * too few shots cannot give is empty.
 */
export function comparisonTable(
  builds: readonly string[],
  values: readonly number[],
  baseline: string,
  goal: Goal,
): Outcome<(string | number)[][]> {
  const lists = shotsByBuild(builds, values);
  if (isProblem(lists)) return lists;
  if (lists.length === 0) return unavailable("There are no shots to compare.");
  const wished = baseline.toLowerCase();
  const base = wished === "" ? 0 : lists.findIndex(({ build }) => build.toLowerCase() === wished);
  if (base < 0) {
    return invalid(
      `baseline is "${baseline}"; it should be one of ${lists.map(({ build }) => build).join(", ")}.`,
    );
  }
  const groups = lists.map(({ figures }) => figures);
  const found = compareWithBaseline(groups, base);
  if (isProblem(found)) return found;
  const counted = groups.map(groupOf);
  const pooled = sharedSpread(groups).shared || counted.some(({ n, sd }) => n < 2 || !sd);
  const chances = chanceBest(counted, goal, pooled ? "pooled" : "separate");
  const rows = found.rows.map((row, i) => {
    const compared = i === base ? [null, null, null, null] : [row.difference, row.low, row.high, row.p];
    const chance = isProblem(chances) || lists.length < 2 ? null : chances[i]!;
    return [lists[i]!.build, row.n, row.mean, row.sd, ...compared, chance].map((cell) => cell ?? "");
  });
  return [HEADINGS, ...rows];
}
