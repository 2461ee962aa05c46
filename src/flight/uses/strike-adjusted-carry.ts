import { quantileSorted } from "simple-statistics";
import { type Outcome, unavailable } from "../../outcome/problem.ts";
import type { Air } from "../air/air.ts";
import type { FlightOptions } from "../trajectory/fly-ball.ts";
import { within } from "../within.ts";
import { type ChangedShot, carryOfChanged, type SpeedShot } from "./at-club-speed.ts";

/**
 * The smash factor a player is held to: the median of the shots, or "best", what one shot in ten exceeds (a greatest
 * value would be one misreading). `unavailable` below three shots.
 */
export function usualSmash(
  shots: readonly SpeedShot[],
  which: "median" | "best" = "median",
): Outcome<number> {
  const smashes = shots
    .map((shot) => shot.strike.speed / shot.clubSpeed)
    .filter((smash) => Number.isFinite(smash) && smash > 0)
    .sort((a, b) => a - b);
  if (smashes.length < 3)
    return unavailable("three shots with club and ball speed are needed for a usual smash");
  return quantileSorted(smashes, which === "median" ? 0.5 : 0.9);
}

/**
 * The carry the shot would have had, had the ball left as fast as the player's strikes usually make it: ball speed
 * becomes club speed x `smash`; launch, spin and axis stay as measured, though a better strike changes them a little
 * too.
 */
export function strikeAdjustedCarry(
  shot: SpeedShot,
  smash: number,
  air: Air,
  options: FlightOptions = {},
): Outcome<ChangedShot> {
  const problem =
    within("club speed", shot.clubSpeed, 5, 80, "m/s") ?? within("smash factor", smash, 0.5, 1.6);
  if (problem) return problem;
  return carryOfChanged(shot, { ...shot.strike, speed: shot.clubSpeed * smash }, air, options);
}
