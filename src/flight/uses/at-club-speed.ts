import { isProblem, type Outcome } from "../../outcome/problem.ts";
import type { Air } from "../air/air.ts";
import { type FlightOptions, flyBall } from "../trajectory/fly-ball.ts";
import type { Strike } from "../trajectory/strike.ts";
import { within } from "../within.ts";
import { carryRatio } from "./carry-ratio.ts";
import { isMeasured } from "./measured-shot.ts";

/** A shot of which the club speed is known. */
export interface SpeedShot {
  readonly strike: Strike;
  /** m/s */
  readonly clubSpeed: number;
  /** Measured, m; left out or NaN where there is none. */
  readonly carry?: number;
}

export interface ChangedShot {
  readonly strike: Strike;
  /** m: the measured carry times a ratio of computed ones, or the computed one. */
  readonly carry: number;
  readonly from: "ratio" | "model";
}

/**
 * The shot at another club speed, so that builds can be compared as if every swing had been as fast. The delivery is
 * taken to stay as it was: ball speed and spin go with club speed (the same smash factor and spin loft), launch, axis
 * and direction stay. Air may differ from the session's, for "same air, same speed".
 */
export function atClubSpeed(
  shot: SpeedShot,
  clubSpeed: number,
  air: Air,
  options: FlightOptions = {},
  reference: Air = air,
): Outcome<ChangedShot> {
  const problem =
    within("club speed", shot.clubSpeed, 5, 80, "m/s") ??
    within("common club speed", clubSpeed, 5, 80, "m/s");
  if (problem) return problem;
  const by = clubSpeed / shot.clubSpeed;
  const strike = { ...shot.strike, speed: shot.strike.speed * by, spin: shot.strike.spin * by };
  return carryOfChanged(shot, strike, air, options, reference);
}

/** The carry of a shot whose strike was changed: by ratio where a carry was measured, else by the model alone. */
export function carryOfChanged(
  shot: Pick<SpeedShot, "strike" | "carry">,
  strike: Strike,
  air: Air,
  options: FlightOptions,
  reference: Air = air,
): Outcome<ChangedShot> {
  if (isMeasured(shot.carry)) {
    const ratio = carryRatio({ strike, air: reference }, { strike: shot.strike, air }, options);
    return isProblem(ratio) ? ratio : { strike, carry: shot.carry * ratio, from: "ratio" };
  }
  const flight = flyBall(strike, reference, options);
  return isProblem(flight) ? flight : { strike, carry: flight.carry, from: "model" };
}
