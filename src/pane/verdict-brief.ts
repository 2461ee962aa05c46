import type { Session } from "../fitting/session.ts";
import { isProblem } from "../outcome/problem.ts";
import { choiceOf } from "./judge.ts";

/** How sure the choice is, seen also while the part is closed. */
export function verdictBrief(session: Session): string {
  const { chosen } = choiceOf(session);
  if (isProblem(chosen)) return "no verdict yet";
  return chosen.verdict === "too close to call" ? chosen.verdict : `${chosen.verdict}: ${chosen.best.build}`;
}
