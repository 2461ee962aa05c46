import type { Session } from "../fitting/session.ts";
import { isProblem } from "../outcome/problem.ts";
import type { BenchChoice } from "./draft.ts";
import { choiceOf } from "./judge.ts";

/** The build that goes to the bench: the one chosen by hand, else the verdict's, else the baseline. */
export function chosenBuild(session: Session, { chosen }: BenchChoice): string {
  if (session.builds.some(({ name }) => name === chosen)) return chosen;
  const { chosen: verdict } = choiceOf(session);
  return isProblem(verdict) ? session.baseline : verdict.best.build;
}
