import { isProblem, type Outcome, unavailable } from "../../outcome/problem.ts";
import type { Air } from "../air/air.ts";
import { BALL, RADIANS_A_SECOND_PER_RPM } from "../ball/ball.ts";
import { RADIANS } from "../impact/delivery.ts";
import { type FlightOptions, flyBall } from "../trajectory/fly-ball.ts";
import type { Strike } from "../trajectory/strike.ts";
import { within } from "../within.ts";
import { isMeasured } from "./measured-shot.ts";

/** A figure after the change, with the least and greatest that the stated assumptions allow. */
export interface Ranged {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What another loft changes of a shot. */
export type LoftFigure =
  | "dynamicLoft"
  | "launch"
  | "ballSpeed"
  | "spin"
  | "height"
  | "landingAngle"
  | "carry";

type Figures = Readonly<Record<LoftFigure, number>>;

/** What a loft change does: degrees, m/s, rpm and metres. `change` is after less before. */
export interface LoftChange {
  readonly after: Record<LoftFigure, Ranged>;
  readonly change: Record<LoftFigure, Ranged>;
}

/**
 * Drag along the face over drive into it, per tangent of spin loft: how far the ball starts below the face's normal.
 * 0.17 is a driver, 0.21 a wedge by rigid bodies that roll (`launchDirection`); they put the launch 0.83 and, at wedge
 * lofts, 0.74 of the way to the face.
 */
const GRIPS = [0.17, 0.19, 0.21] as const;

/** How much of the bend reaches the ball: all of it, or less when hands give way. Common practice, no source. */
const SHARES = [0.8, 1] as const;

/**
 * What bending or choosing a loft `delta` degrees weaker (plus) or stronger (minus) does to a strike. The delivery stays
 * as it was: the dynamic loft moves by the change (or by 0.8 of it at the low end), and with it spin loft. The ball's
 * start below the face's normal grows as the tangent of spin loft, so that the launch takes about 0.75 to 0.85 of the
 * change; ball speed goes as the cosine and spin as the sine of spin loft.
 *
 * Spin loft is read from the strike itself: a ball that rolls off the face starts asin(0.4 S) below its normal, S the spin
 * ratio. The limits span the assumptions, not the spread of shots. With a measured carry the carry is that times the
 * ratio of the computed ones.
 *
 * @param delta degrees, -10 to 10
 */
export function loftChange(
  shot: { readonly strike: Strike; readonly carry?: number },
  delta: number,
  air: Air,
  options: FlightOptions = {},
): Outcome<LoftChange> {
  const problem = within("loft change", delta, -10, 10, "degrees");
  if (problem) return problem;
  const before = flyBall(shot.strike, air, options);
  if (isProblem(before)) return before;
  const scale = isMeasured(shot.carry) && before.carry > 1 ? shot.carry / before.carry : 1;
  const offset = belowNormal(shot.strike);
  const start: Figures = {
    dynamicLoft: shot.strike.launch + offset / RADIANS,
    launch: shot.strike.launch,
    ballSpeed: shot.strike.speed,
    spin: shot.strike.spin,
    height: before.height,
    landingAngle: before.landingAngle,
    carry: before.carry * scale,
  };
  const outcomes: Figures[] = [];
  let middle = start;
  for (const grip of GRIPS) {
    for (const share of SHARES) {
      const strike = changedStrike(shot.strike, offset, delta * share, grip);
      if (!strike) return unavailable("the change would turn the spin loft below 0");
      const flight = flyBall(strike, air, options);
      if (isProblem(flight)) return flight;
      const outcome = {
        dynamicLoft: start.dynamicLoft + delta * share,
        launch: strike.launch,
        ballSpeed: strike.speed,
        spin: strike.spin,
        height: flight.height,
        landingAngle: flight.landingAngle,
        carry: flight.carry * scale,
      };
      outcomes.push(outcome);
      if (grip === GRIPS[1] && share === 1) middle = outcome;
    }
  }
  return {
    after: ranged(middle, outcomes, undefined),
    change: ranged(middle, outcomes, start),
  };
}

/** Angle in radians by which the ball starts below the normal of the face. */
function belowNormal(strike: Strike): number {
  const ratio = (strike.spin * RADIANS_A_SECOND_PER_RPM * BALL.radius) / strike.speed;
  return Math.asin(Math.min(0.9, 0.4 * ratio));
}

function changedStrike(strike: Strike, offset: number, delta: number, grip: number): Strike | undefined {
  const spinLoft = Math.atan(Math.tan(offset) / grip);
  const changed = spinLoft + delta * RADIANS;
  if (changed < 0 || changed >= Math.PI / 2) return undefined;
  const speedAt = (angle: number) => Math.hypot(Math.cos(angle), grip * Math.sin(angle));
  const offsetAfter = Math.atan(grip * Math.tan(changed));
  return {
    ...strike,
    launch: strike.launch + delta - (offsetAfter - offset) / RADIANS,
    speed: (strike.speed * speedAt(changed)) / speedAt(spinLoft),
    spin: spinLoft > 0 ? (strike.spin * Math.sin(changed)) / Math.sin(spinLoft) : strike.spin,
  };
}

/** The middle assumption's figures within the least and greatest of all; less those before, where given. */
function ranged(
  middle: Figures,
  all: readonly Figures[],
  before: Figures | undefined,
): Record<LoftFigure, Ranged> {
  const range = (key: LoftFigure): Ranged => {
    const less = before?.[key] ?? 0;
    const values = all.map((outcome) => outcome[key] - less);
    return { value: middle[key] - less, low: Math.min(...values), high: Math.max(...values) };
  };
  return {
    dynamicLoft: range("dynamicLoft"),
    launch: range("launch"),
    ballSpeed: range("ballSpeed"),
    spin: range("spin"),
    height: range("height"),
    landingAngle: range("landingAngle"),
    carry: range("carry"),
  };
}
