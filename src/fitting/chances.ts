import { mean, sampleStandardDeviation } from "simple-statistics";
import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { chanceBest, type GroupMean, sharedSpread } from "../stats/index.ts";
import { goalScores } from "./goal-scores.ts";
import type { Goal, Session } from "./session.ts";

/** How likely each build is to be the best one for a goal. */
export interface GoalChances {
  readonly goal: Goal;
  readonly better: "high" | "low";
  readonly words: string;
  /** Builds that have anything to be judged by. */
  readonly builds: readonly BuildChance[];
  readonly spread: "pooled" | "separate";
}

/** A build with its chance, from 0 to 1, of being the best of those hit. */
export interface BuildChance {
  readonly build: string;
  readonly n: number;
  readonly mean: number;
  readonly sd: number | null;
  readonly chance: number;
}

/**
 * The chance of being best for a goal, build by build. The spread is shared when the builds spread alike; with one
 * shot a build, or nothing that varies, there is no saying.
 */
export function goalChances(session: Session, goal: Goal = session.goal): Outcome<GoalChances> {
  const scores = goalScores(session, goal);
  if (isProblem(scores)) return scores;
  const judged = session.builds
    .map(({ name }, i) => ({ build: name, scores: scores.byBuild[i]! }))
    .filter((one) => one.scores.length > 0);
  if (judged.length < 2) return unavailable("It takes shots with at least two builds to compare them.");
  const groups = judged.map((one) => groupOf(one.scores));
  if (groups.every(({ n }) => n < 2)) {
    return unavailable("One shot a build tells nothing of how far shots vary: hit at least two with each.");
  }
  const spread =
    sharedSpread(judged.map((one) => one.scores)).shared || groups.some(tooFew) ? "pooled" : "separate";
  const chances = chanceBest(groups, scores.better, spread);
  if (isProblem(chances)) return chances;
  const builds = judged.map(({ build }, i) => ({ build, ...groups[i]!, chance: chances[i]! }));
  return { goal, better: scores.better, words: scores.words, builds, spread };
}

function tooFew({ n, sd }: GroupMean): boolean {
  return n < 2 || !sd;
}

/** A group's count, mean and spread. */
export function groupOf(scores: readonly number[]): GroupMean & { readonly sd: number | null } {
  const list = [...scores];
  return {
    n: list.length,
    mean: mean(list),
    sd: list.length > 1 ? sampleStandardDeviation(list) : null,
  };
}
