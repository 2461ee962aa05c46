import type { Decision } from "./decide.ts";
import type { Session } from "./session.ts";

/**
 * The build that the best one is told beside: the one it is to replace, so that a player sees what would change; the
 * runner-up where the best is the baseline itself, or where the two cannot be told apart and the choice is between
 * them.
 */
export function heldAgainst(
  { baseline }: Pick<Session, "baseline">,
  { verdict, best, runnerUp }: Pick<Decision, "verdict" | "best" | "runnerUp">,
): string {
  return verdict === "too close to call" || baseline === best.build ? runnerUp.build : baseline;
}
