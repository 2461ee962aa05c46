import type { Outcome } from "../outcome/problem.ts";
import { checkNumbers } from "./check-number.ts";

/** What bending a head to another loft does. */
export interface LoftChange {
  /** Degrees: positive is weaker, more loft. */
  readonly change: number;
  /** Bounce after bending, in degrees. */
  readonly bounce: number;
}

/**
 * Bending a head from one loft to another turns its sole by the same angle: a degree stronger takes a degree of
 * bounce, a degree weaker gives one. Common practice, no source; it is the geometry of a head turned about its
 * hosel's foot.
 *
 * @example loftChange(46, 44, 8) // { change: -2, bounce: 6 }
 */
export function loftChange(from: number, to: number, bounce: number): Outcome<LoftChange> {
  const angle = { unit: "degrees", least: -30, greatest: 90 };
  const problem = checkNumbers([
    [from, { ...angle, name: "loft before" }],
    [to, { ...angle, name: "loft after" }],
    [bounce, { ...angle, name: "bounce" }],
  ]);
  return problem ?? { change: to - from, bounce: bounce + to - from };
}
