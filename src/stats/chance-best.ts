import { invalid, type Outcome, unavailable } from "../outcome/problem.ts";
import { finite } from "./finite.ts";
import { pooledChances } from "./pooled-chances.ts";
import { separateChances } from "./separate-chances.ts";

/** What is known of one group's mean. */
export interface GroupMean {
  readonly n: number;
  readonly mean: number;
  /** n - 1; null (or anything) where n is 1. */
  readonly sd: number | null;
}

/** The highest mean, the lowest, or the one nearest to a number. */
export type Goal = "high" | "low" | number;

/**
 * For each group the probability that its true mean is the best of all: highest, lowest or nearest to a number.
 *
 * Averages of few shots run ahead of the truth, and the best of several the most. So each mean leans towards the
 * common one, the more the fewer its shots and the less the groups differ: partial pooling (Efron and Morris 1975,
 * Journal of the American Statistical Association 70, 311-319) under the prior of build-prior.ts, which also leaves
 * room for builds that differ in nothing. With `spread` "pooled" one unknown spread is common to all groups; with
 * "separate" each has its own. By quadrature, without random numbers: the same shots have the same chances. They sum
 * to 1, and identical groups have equal ones.
 *
 * A group with a single value needs the pooled spread, and another group with two that differ.
 */
export function chanceBest(
  groups: readonly GroupMean[],
  goal: Goal,
  spread: "pooled" | "separate",
): Outcome<number[]> {
  if (groups.length === 0) return unavailable("There are no groups to choose from.");
  for (const [i, { n, mean, sd }] of groups.entries()) {
    if (!(Number.isInteger(n) && n > 0)) {
      return invalid(`Group ${i + 1} has n ${n}; it must be a whole number, 1 or more.`);
    }
    if (!Number.isFinite(mean)) return invalid(`Group ${i + 1} has mean ${mean}; it must be a number.`);
    if (n > 1 && !(Number.isFinite(sd) && sd! >= 0)) {
      return invalid(`Group ${i + 1} has sd ${sd}; it must be a number, 0 or more.`);
    }
  }
  if (typeof goal === "number" && !Number.isFinite(goal))
    return invalid(`goal is ${goal}; it must be a number.`);
  if (groups.length === 1) return [1];
  if (spread === "separate" && groups.some(({ n, sd }) => n < 2 || !sd)) {
    return unavailable("With separate spreads every group needs two values that differ.");
  }
  if (!groups.some(({ n, sd }) => n > 1 && sd! > 0)) {
    return unavailable("Nothing tells how far values spread: two different values of one group are needed.");
  }
  const chances = spread === "pooled" ? pooledChances : separateChances;
  const scaled = standardised(groups, goal);
  return finite(chances(scaled.groups, scaled.target));
}

/** From the first mean on and in units of the largest spread, so that no figure is too large or too small to square. */
function standardised(
  groups: readonly GroupMean[],
  goal: Goal,
): { groups: GroupMean[]; target: number | null } {
  const unit = Math.max(...groups.map(({ n, sd }) => (n > 1 ? sd! : 0)));
  const start = groups[0]!.mean;
  const sign = goal === "low" ? -1 : 1;
  return {
    groups: groups.map(({ n, mean, sd }) => ({
      n,
      mean: (sign * (mean - start)) / unit,
      sd: (sd ?? 0) / unit,
    })),
    target: typeof goal === "number" ? (goal - start) / unit : null,
  };
}
