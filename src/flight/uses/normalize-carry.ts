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
 * How much it errs depends on the ball more than on the club: from 1,600 m to sea level, for four published or derived
 * truths and driver to wedge, the worst shots err by 2.5 yd (root mean square) by the plain model and by 1.5 yd by one
 * calibrated to the session
 * (`calibrateModels`); `npm run bench -- flight` prints each.
 *
 * @param options wind and ground of the session; model and factors of a calibration
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
