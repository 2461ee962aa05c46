import { isProblem } from "../outcome/problem.ts";
import type { Numbers } from "./present.ts";
import { spreadTest } from "./spread-test.ts";

/** Whether groups may be treated as spreading alike. */
export interface SharedSpread {
  readonly shared: boolean;
  /** Of `spreadTest`; null where it could not be done. */
  readonly p: number | null;
  readonly reason: string;
}

/** Below this probability the spreads count as different. */
export const spreadLevel = 0.2;

/**
 * Whether groups share one spread, by `spreadTest` on all groups with two values or more. Where the test cannot be
 * done, pooling is the only way to say anything, and the reason says so.
 *
 * The level is 0.2 and not the usual 0.05 because a few shots seldom show a difference and a wrongly pooled spread
 * costs more than a wrongly separate one. Found by simulating families of 95 % limits (`compareWithBaseline`, three
 * groups of five, four thousand rounds): with one group spreading up to three times as wide as the others 93 to 94 %
 * of the families hold, at level 0.1 92 to 93 %, always pooled 90 to 93 %. With three shots a build little can be
 * told: a baseline three times as wide as the others still leaves only 91 %.
 */
export function sharedSpread(groups: readonly Numbers[]): SharedSpread {
  const test = spreadTest(groups);
  if (isProblem(test)) {
    return {
      shared: true,
      p: null,
      reason: "The spread is pooled: there are too few values to tell whether the groups spread differently.",
    };
  }
  // Stryker disable next-line EqualityOperator: no probability comes out as the level exactly
  const shared = test.p >= spreadLevel;
  const p = test.p.toPrecision(2);
  return {
    shared,
    p: test.p,
    reason: shared
      ? `The spread is pooled: the groups do not spread clearly differently (p = ${p}).`
      : `Each group keeps its own spread: the groups may spread differently (p = ${p}).`,
  };
}
