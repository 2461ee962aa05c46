import { isProblem, type Outcome, unavailable } from "../../outcome/problem.ts";
import type { Air } from "../air/air.ts";
import { type FlightOptions, flyBall } from "../trajectory/fly-ball.ts";
import type { Strike } from "../trajectory/strike.ts";

/** One strike in one air. */
export interface Case {
  readonly strike: Strike;
  readonly air: Air;
}

/**
 * Carry of one case over that of another, both computed. Every correction of a measured carry is such a ratio, so that
 * a model that flies all balls 5 % too far corrects as well as a perfect one.
 */
export function carryRatio(wanted: Case, had: Case, options: FlightOptions = {}): Outcome<number> {
  const then = flyBall(had.strike, had.air, options);
  if (isProblem(then)) return then;
  const now = flyBall(wanted.strike, wanted.air, options);
  if (isProblem(now)) return now;
  if (then.carry < 1)
    return unavailable("the strike carries less than 1 m, too little to correct by a ratio");
  return now.carry / then.carry;
}
