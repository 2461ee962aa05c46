import { isProblem, type Outcome } from "../outcome/problem.ts";
import { type BuildChance, type GoalChances, goalChances } from "./chances.ts";
import { goalScores } from "./goal-scores.ts";
import type { Goal, Session } from "./session.ts";
import { type MoreShots, shotsToSettle } from "./shots-to-settle.ts";

/** How sure a choice is. */
export type Verdict = "clear" | "leaning" | "too close to call";

/** The chance from which a choice counts as clear. The figure is ours; `npm run bench -- decide` shows how it fares. */
export const CLEAR = 0.95;
/** The chance from which a choice counts as leaning; ours likewise. */
export const LEANING = 0.75;

/** With no more shots than this, builds whose shots overlap are never called clear, whatever the sums say. */
const FEW_SHOTS = 3;

/** Which build suits, and how sure that is. */
export interface Decision {
  readonly goal: Goal;
  readonly verdict: Verdict;
  readonly best: BuildChance;
  readonly runnerUp: BuildChance;
  readonly chances: GoalChances;
  /** More shots that would most likely settle it; none where the choice is clear. */
  readonly more: MoreShots;
}

/**
 * Chooses the build that most likely serves the goal best. `clear` asks for a chance of 95 in 100 and, where only
 * three shots were hit, for shots that do not overlap; `leaning` for 75 in 100.
 */
export function decide(session: Session, goal: Goal = session.goal): Outcome<Decision> {
  const chances = goalChances(session, goal);
  return isProblem(chances) ? chances : settle(choose(session, chances));
}

/** A choice from chances that are known already. What it leaves out, `settle` adds: it takes longest to work out. */
export function choose(session: Session, chances: GoalChances): Omit<Decision, "more"> {
  const [best, runnerUp] = [...chances.builds].sort((a, b) => b.chance - a.chance) as [
    BuildChance,
    BuildChance,
  ];
  const { goal } = chances;
  return { goal, verdict: verdictOf(session, chances, best), best, runnerUp, chances };
}

/** A choice with the shots that would settle it. */
export function settle(choice: Omit<Decision, "more">): Decision {
  const clear = choice.verdict === "clear";
  return { ...choice, more: clear ? { each: 0, builds: [] } : shotsToSettle(choice.chances, CLEAR) };
}

function verdictOf(session: Session, { goal, builds }: GoalChances, best: BuildChance): Verdict {
  if (best.chance < LEANING) return "too close to call";
  if (best.chance < CLEAR) return "leaning";
  const blurred = builds.some(
    (other) =>
      other !== best &&
      Math.min(best.n, other.n) <= FEW_SHOTS &&
      overlap(session, goal, best.build, other.build),
  );
  return blurred ? "leaning" : "clear";
}

/** Whether some shot of the one is no better than some shot of the other. */
function overlap(session: Session, goal: Goal, best: string, other: string): boolean {
  const scores = goalScores(session, goal);
  if (isProblem(scores)) return true;
  const [a, b] = [best, other].map(
    (name) => scores.byBuild[session.builds.findIndex((build) => build.name === name)]!,
  );
  const sign = scores.better === "high" ? 1 : -1;
  return Math.min(...a!.map((score) => sign * score)) <= Math.max(...b!.map((score) => sign * score));
}
