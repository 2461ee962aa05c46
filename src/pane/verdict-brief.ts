import type { Session } from "../fitting/session.ts";
import { isProblem } from "../outcome/problem.ts";
import { judge } from "./judge.ts";

/** How sure the choice is, seen also while the part is closed. */
export function verdictBrief(session: Session): string {
  const { decision } = judge(session);
  if (isProblem(decision)) return "no verdict yet";
  return decision.verdict === "too close to call"
    ? decision.verdict
    : `${decision.verdict}: ${decision.best.build}`;
}
