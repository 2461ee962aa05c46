import type { Session } from "../fitting/session.ts";
import { isProblem } from "../outcome/problem.ts";
import type { BenchChoice } from "./draft.ts";
import { judge } from "./judge.ts";

/** The build that goes to the bench: the one chosen by hand, else the verdict's, else the baseline. */
export function chosenBuild(session: Session, { chosen }: BenchChoice): string {
  if (session.builds.some(({ name }) => name === chosen)) return chosen;
  const { decision } = judge(session);
  return isProblem(decision) ? session.baseline : decision.best.build;
}
