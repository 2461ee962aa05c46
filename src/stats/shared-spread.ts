import { isProblem } from "../outcome/problem.ts";
import { brownForsythe } from "./brown-forsythe.ts";
import { type Numbers, present } from "./present.ts";

/** Whether groups may be treated as spreading alike. */
export interface SharedSpread {
  readonly shared: boolean;
  /** Of the test of Brown and Forsythe; null where it could not be done. */
  readonly p: number | null;
  readonly reason: string;
}

/** Below this probability the spreads count as different. */
export const spreadLevel = 0.1;

/**
 * Whether groups share one spread, by the test of Brown and Forsythe on all groups with two values or more. The
 * level is 0.1 and not the usual 0.05 because the test seldom sees a difference among a few shots (the level is
 * common practice, no source). Where the test cannot be done, pooling is the only way to say anything, and the
 * reason says so.
 */
export function sharedSpread(groups: readonly Numbers[]): SharedSpread {
  const test = brownForsythe(groups.map(present).filter((group) => group.length > 1));
  if (isProblem(test)) {
    return {
      shared: true,
      p: null,
      reason: "The spread is pooled: there are too few values to tell whether the groups spread differently.",
    };
  }
  const shared = test.p >= spreadLevel;
  const p = test.p.toPrecision(2);
  return {
    shared,
    p: test.p,
    reason: shared
      ? `The spread is pooled: the groups do not spread clearly differently (Brown-Forsythe p = ${p}).`
      : `Each group keeps its own spread: the groups spread differently (Brown-Forsythe p = ${p}).`,
  };
}
