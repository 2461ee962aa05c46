import { sum } from "simple-statistics";
import { invalid, type Outcome, unavailable } from "../outcome/problem.ts";
import { averageOverSpread } from "./average-over-spread.ts";
import { type Belief, normalBelief, tBelief } from "./belief.ts";
import { chancesHighest, chancesNearest } from "./chances-among-beliefs.ts";
import { finite } from "./finite.ts";

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
 * For each group the probability that its true mean is the best of all: highest, lowest or nearest to a target.
 *
 * Before the shots every mean and every (logarithm of a) spread counts as equally likely; after them a mean is
 * spread about its average as Student's t (Box and Tiao 1973, Bayesian Inference in Statistical Analysis, section
 * 2.4). With `spread` "pooled" one unknown spread is common to all groups: given it the means are normal, and the
 * answer is averaged over it. With "separate" each group has its own. The integrals are done by quadrature, without
 * random numbers. The chances sum to 1 to better than 1e-9, and identical groups have equal chances.
 *
 * A group with a single value needs the pooled spread, and another group with two.
 */
export function chanceBest(
  groups: readonly GroupMean[],
  goal: Goal,
  spread: "pooled" | "separate",
): Outcome<number[]> {
  if (groups.length === 0) return unavailable("There are no groups to choose from.");
  for (const [i, { n, mean, sd }] of groups.entries()) {
    if (!(Number.isInteger(n) && n > 0))
      return invalid(`Group ${i + 1} has n ${n}; it must be a whole number, 1 or more.`);
    if (!Number.isFinite(mean)) return invalid(`Group ${i + 1} has mean ${mean}; it must be a number.`);
    if (n > 1 && !(sd !== null && sd >= 0 && Number.isFinite(sd))) {
      return invalid(`Group ${i + 1} has sd ${sd}; it must be a number, 0 or more.`);
    }
  }
  if (typeof goal === "number" && !Number.isFinite(goal))
    return invalid(`goal is ${goal}; it must be a number.`);
  if (groups.length === 1) return [1];
  return spread === "pooled" ? pooledChances(groups, goal) : separateChances(groups, goal);
}

function separateChances(groups: readonly GroupMean[], goal: Goal): Outcome<number[]> {
  if (groups.some(({ n, sd }) => n < 2 || !sd)) {
    return unavailable("With separate spreads every group needs two values that differ.");
  }
  return finite(
    chances(
      groups.map(({ n, mean, sd }) => tBelief(mean, sd! / Math.sqrt(n), n - 1)),
      goal,
      singleTolerance,
    ),
  );
}

function pooledChances(groups: readonly GroupMean[], goal: Goal): Outcome<number[]> {
  const df = sum(groups.map(({ n }) => n - 1));
  const pooledSd = Math.sqrt(sum(groups.map(({ n, sd }) => (n > 1 ? (n - 1) * sd! ** 2 : 0))) / df);
  if (!(pooledSd > 0))
    return unavailable("Nothing tells how far values spread: two different values of one group are needed.");
  // Counted in true spreads the means lie at mean * u / sd for a ratio u of estimated to true spread.
  const from = typeof goal === "number" ? goal : sum(groups.map(({ mean }) => mean)) / groups.length;
  const given = (u: number) =>
    chances(
      groups.map(({ n, mean }) => normalBelief(((mean - from) / pooledSd) * u, 1 / Math.sqrt(n))),
      typeof goal === "number" ? 0 : goal,
      nestedTolerance,
    );
  return finite(averageOverSpread(df, given, nestedTolerance));
}

// What the two rules of `integrate` may disagree by. The finer rule is then right to about 1e-12 where one integral
// stands in another, and nearly to the last digit where one is enough.
const nestedTolerance = 1e-7;
const singleTolerance = 1e-11;

function chances(beliefs: readonly Belief[], goal: Goal, tolerance: number): number[] {
  if (goal === "high") return chancesHighest(beliefs, tolerance);
  if (goal === "low") {
    return chancesHighest(
      beliefs.map((belief) => ({ ...belief, centre: -belief.centre })),
      tolerance,
    );
  }
  return chancesNearest(beliefs, goal, tolerance);
}
