import { isProblem, type Outcome } from "../outcome/problem.ts";
import { groupOf } from "./chances.ts";
import type { Decision } from "./decide.ts";
import { goalScores } from "./goal-scores.ts";
import { FIRST_SHOTS, nextBuild } from "./next-build.ts";
import type { Session } from "./session.ts";
import { type TestPlan, testPlan } from "./test-plan.ts";

/** What to hit next, and whether to go on at all. */
export interface WhatNext {
  /** Null: stop. */
  readonly build: string | null;
  readonly why: string;
  /** A balanced order for a whole test of these builds, for the next player or the next day. */
  readonly order: TestPlan | null;
}

/** Shots a build of a whole test, when nothing is known yet (common practice, no source). */
const USUAL_SHOTS = 6;

/** A session is stopped once more shots than these with one build would only tire the player. */
const MOST_EACH = 20;

/** Names the build whose next shot says most, or says that it is time to stop. */
export function whatNext(session: Session, decision: Outcome<Pick<Decision, "verdict">>): WhatNext {
  const names = session.builds.map(({ name }) => name);
  const plan = testPlan(names, USUAL_SHOTS);
  const order = isProblem(plan) ? null : plan;
  if (names.length === 1) {
    return { build: null, why: `Hit a second build next, as often as ${names[0]}.`, order };
  }
  const scores = goalScores(session);
  if (isProblem(scores)) return { build: null, why: scores.message, order };
  if (!isProblem(decision) && decision.verdict === "clear") {
    return { build: null, why: "The choice is clear: stop here, before the player tires.", order };
  }
  if (scores.byBuild.some((list) => list.length >= MOST_EACH)) {
    return {
      build: null,
      why: `One build has had ${MOST_EACH} shots: more today would test the player, not the builds.`,
      order,
    };
  }
  const counted = scores.byBuild.map((list) =>
    list.length > 0 ? groupOf(list) : { n: 0, mean: 0, sd: null },
  );
  const next = nextBuild(counted, scores.better);
  if (isProblem(next)) return { build: null, why: next.message, order };
  const build = names[next]!;
  const why =
    counted[next]!.n < FIRST_SHOTS
      ? `Hit ${build} next: each build needs ${FIRST_SHOTS} shots before averages say much.`
      : `Should you hit another, hit it with ${build}: that says most about which build is best.`;
  return { build, why, order };
}
