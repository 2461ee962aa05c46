import { decide } from "../fitting/decide.ts";
import type { Session } from "../fitting/session.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";

/** The build that the bench is to make, and how it came to be that one. */
export interface ForBench {
  readonly build: string;
  readonly why: string;
}

/** The build that most likely serves the goal best, however close it is; of a single build that one. */
export function buildForBench(session: Session): Outcome<ForBench> {
  const [only, ...others] = session.builds;
  if (only && others.length === 0) return { build: only.name, why: "the only build" };
  const decision = decide(session);
  if (isProblem(decision)) return decision;
  const { best, verdict } = decision;
  const why =
    verdict === "clear" ? "the best build" : `the build most likely best, though the verdict is "${verdict}"`;
  return { build: best.build, why };
}
