import { isProblem, type Outcome } from "../../outcome/problem.ts";
import { type Air, airOfDensity, SEA_LEVEL_DENSITY } from "../air/air.ts";
import type { FlightOptions } from "../trajectory/fly-ball.ts";
import type { Strike } from "../trajectory/strike.ts";
import { within } from "../within.ts";
import { carryRatio } from "./carry-ratio.ts";

/** Air at sea level in the standard atmosphere: the reference when none is named. */
export const REFERENCE_AIR: Air = airOfDensity(SEA_LEVEL_DENSITY);

/**
 * The carry the same strike would have in reference air: the measured carry times the ratio of the computed carries in
 * the two airs. Same unit as the carry. What temperature does to the ball itself is not in here.
 *
 * Against flights of Smits and Smith (1994), a 150 yd iron from 1,600 m to sea level, the ratio errs by up to 0.6 yd. With
 * the factors of a calibration it errs by up to 2.2 yd: they fit the thin air but not how drag goes with Reynolds number,
 * so that the plain ratio is the better correction there.
 *
 * @param options wind and ground of the session; factors of a calibration are taken, see above
 */
export function normalizeCarry(
  carry: number,
  strike: Strike,
  air: Air,
  reference: Air = REFERENCE_AIR,
  options: FlightOptions = {},
): Outcome<number> {
  const problem = within("carry", carry, 0, 1000);
  if (problem) return problem;
  const ratio = carryRatio({ strike, air: reference }, { strike, air }, options);
  return isProblem(ratio) ? ratio : carry * ratio;
}
