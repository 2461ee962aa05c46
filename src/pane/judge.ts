import { goalChances } from "../fitting/chances.ts";
import { compareBuilds } from "../fitting/compare-builds.ts";
import { choose, type Decision, settle } from "../fitting/decide.ts";
import type { Session } from "../fitting/session.ts";
import { type VerdictWords, verdictWords } from "../fitting/verdict-words.ts";
import { type WhatNext, whatNext } from "../fitting/what-next.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import { lastAnswer } from "./last-answer.ts";

/** Which build is ahead and whose shot would tell most: what must follow each shot at once. */
export interface Choice {
  readonly chosen: Outcome<Omit<Decision, "more">>;
  readonly next: WhatNext;
}

/** The last comparison is remembered, for figures, pictures and words all stand on it. */
export const compare = lastAnswer(compareBuilds);

/** Chances for the chosen goal and what to hit next; the last answer is remembered. */
export const choiceOf = lastAnswer((session: Session): Choice => {
  const chances = goalChances(session);
  const chosen = isProblem(chances) ? chances : choose(session, chances);
  return { chosen, next: whatNext(session, chosen) };
});

/** The verdict in words, with the shots that would settle it; the last answer is remembered. */
export const wordsOf = lastAnswer((session: Session): VerdictWords => {
  const { chosen } = choiceOf(session);
  return verdictWords(session, isProblem(chosen) ? chosen : settle(chosen), compare(session));
});
