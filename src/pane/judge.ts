import { type Decision, decide } from "../fitting/decide.ts";
import { nextBuild } from "../fitting/next-build.ts";
import type { Session } from "../fitting/session.ts";
import { type VerdictWords, verdictWords } from "../fitting/verdict-words.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import { lastAnswer } from "./last-answer.ts";

/** The verdict on a session, in figures and in words, and the build whose next shot would tell most. */
export interface Judgement {
  readonly decision: Outcome<Decision>;
  readonly words: VerdictWords;
  /** Null while there is no saying. */
  readonly next: string | null;
}

/** Judges a session; the last one judged is remembered, for the integrals take a few milliseconds. */
export const judge = lastAnswer((session: Session): Judgement => {
  const decision = decide(session);
  return { decision, words: verdictWords(session, decision), next: nextIn(decision) };
});

function nextIn(decision: Outcome<Decision>): string | null {
  if (isProblem(decision) || decision.verdict === "clear") return null;
  const { builds, better } = decision.chances;
  const place = nextBuild(builds, better);
  return isProblem(place) ? null : builds[place]!.build;
}
