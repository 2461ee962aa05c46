import { isProblem, type Outcome, unavailable } from "../../outcome/problem.ts";
import type { Air } from "../air/air.ts";
import { BALL, GRAVITY } from "../ball/ball.ts";
import type { CoefficientModel } from "../ball/coefficient-model.ts";
import { EXTENDED_BEARMAN_HARVEY } from "../ball/extended-bearman-harvey.ts";
import { within } from "../within.ts";
import { StepCurve, spinBetween } from "./between-knots.ts";
import { checkStrike } from "./check-strike.ts";
import { Forces } from "./forces.ts";
import { integrate } from "./integrate.ts";
import { KNOT, Knots, STRIDE } from "./knots.ts";
import type { Strike } from "./strike.ts";

/** Spin lost a radian a second of turning: d(spin)/dt = -2e-5 x spin x speed / radius. Source: Smits and Smith 1994. */
export const SPIN_DECAY = 2e-5;

/**
 * The most one step may err, metres and metres a second. Carries of 40 to 190 mph, 0 to 60 degrees and 0 to 12,000 rpm
 * then err by less than 0.01 yd.
 */
export const TOLERANCE = 2e-5;

/** What a flight may be told besides the strike and the air. */
export interface FlightOptions {
  /** `EXTENDED_BEARMAN_HARVEY` when left out. */
  readonly model?: CoefficientModel;
  /** m/s; along to the target (a tailwind is positive), across to the right. The same at every height. */
  readonly wind?: { readonly along: number; readonly across: number };
  /** Height of the landing place above the ball, m. */
  readonly ground?: number;
  /** Factors on drag and lift, from `calibrate`. */
  readonly factors?: { readonly drag: number; readonly lift: number };
  readonly decay?: number;
  readonly gravity?: number;
  readonly tolerance?: number;
}

/** What a flight comes to. Metres, seconds, m/s, degrees and rpm. */
export interface Flight {
  /** Down the target line to the landing place, not along the ground track. */
  readonly carry: number;
  /** Right of the target line is positive. */
  readonly offline: number;
  /** Highest point above the ball's place at the start. */
  readonly height: number;
  /** Below the horizontal, positive. */
  readonly landingAngle: number;
  readonly time: number;
  readonly landingSpeed: number;
  readonly landingSpin: number;
  /** Share of the steps at which the coefficients were extended, not measured; 0 when the shot stays in the range. */
  readonly outsideShare: number;
  /** Whether the shot leaves the range the coefficients were measured in. */
  readonly outside: boolean;
}

/**
 * Flies a ball: drag against the motion through the air, lift along spin axis x motion, gravity, spin that decays. The
 * air is the same at every height of the flight. A flight ends where the ball comes down to the ground; one that starts
 * downwards on level ground lands where it starts.
 *
 * Speed 1 to 120 m/s, launch -30 to 89 degrees, spin 0 to 20,000 rpm. `unavailable` when the ball never gets as high as
 * the ground or is still up after 60 seconds.
 */
export function flyBall(strike: Strike, air: Air, options: FlightOptions = {}): Outcome<Flight> {
  const knots = fly(strike, air, options);
  if (isProblem(knots)) return knots;
  const last = knots.count - 2;
  const ground = options.ground ?? 0;
  along.set(knots, last, 0);
  upward.set(knots, last, 1);
  across.set(knots, last, 2);
  const part = upward.fallThrough(ground, upward.top());
  const vx = along.velocity(part);
  const vy = upward.velocity(part);
  const vz = across.velocity(part);
  const level = Math.sqrt(vx * vx + vz * vz);
  const from = knots.data[last * STRIDE]!;
  const outsideShare = shareOutside(knots);
  return {
    carry: along.place(part),
    offline: across.place(part),
    height: highest(knots),
    // Rounding may leave a ball that lands where it starts with a last trace of rise.
    landingAngle: (Math.atan2(Math.max(0, -vy), level) * 180) / Math.PI,
    time: from + part * (knots.data[(last + 1) * STRIDE]! - from),
    landingSpeed: Math.sqrt(level * level + vy * vy),
    landingSpin: Math.max(0, spinBetween(knots, last, part)),
    outsideShare,
    outside: outsideShare > 0,
  };
}

const forces = new Forces();
const STILL = { along: 0, across: 0 };
const shared = new Knots();
const start = new Float64Array(4);
const along = new StepCurve();
const upward = new StepCurve();
const across = new StepCurve();

/** Runs the flight and answers its steps, in an object that the next flight uses again. */
export function fly(strike: Strike, air: Air, options: FlightOptions): Outcome<Knots> {
  const ground = options.ground ?? 0;
  const wind = options.wind ?? STILL;
  const problem =
    checkStrike(strike, air) ??
    within("ground height", ground, -200, 200, "m") ??
    within("wind along", wind.along, -60, 60, "m/s") ??
    within("wind across", wind.across, -60, 60, "m/s");
  if (problem) return problem;
  setForces(strike, air, options);
  forces.windAlong = wind.along;
  forces.windAcross = wind.across;
  const ending = integrate(forces, start, ground, 60, options.tolerance ?? TOLERANCE, shared);
  if (ending === "landed") return shared;
  return unavailable(
    ending === "neverReached"
      ? "the ball never gets up to the height of the ground"
      : "no landing within 60 s",
  );
}

/** The axis is level and square to the launch direction, then tilted by the axis angle about that direction. */
function setForces(strike: Strike, air: Air, options: FlightOptions): void {
  const radians = Math.PI / 180;
  const launch = strike.launch * radians;
  const direction = (strike.direction ?? 0) * radians;
  const tilt = (strike.axis ?? 0) * radians;
  const level = strike.speed * Math.cos(launch);
  const [straight, aside, upright] = [Math.cos(direction), Math.sin(direction), Math.cos(tilt)];
  start[0] = level * straight;
  start[1] = strike.speed * Math.sin(launch);
  start[2] = level * aside;
  start[3] = strike.spin;
  forces.axisX = -upright * aside;
  forces.axisY = -Math.sin(tilt);
  forces.axisZ = upright * straight;
  forces.model = options.model ?? EXTENDED_BEARMAN_HARVEY;
  forces.gravity = options.gravity ?? GRAVITY;
  forces.slowing = (options.decay ?? SPIN_DECAY) / BALL.radius;
  forces.setAir(air.density, air.viscosity, options.factors?.drag ?? 1, options.factors?.lift ?? 1);
}

/** The highest of all tops: a ball with much lift may dip and rise again. */
function highest(knots: Knots): number {
  let height = 0;
  for (let index = 0; index < knots.count - 1; index += 1) {
    // Stryker disable next-line all: asked for by the line below alone
    const from = index * STRIDE;
    // Stryker disable next-line all: saves time only; a step without a top is highest at an end, which is no higher
    if (knots.data[from + KNOT.vy]! < 0 || knots.data[from + STRIDE + KNOT.vy]! > 0) continue;
    upward.set(knots, index, 1);
    height = Math.max(height, upward.place(upward.top()));
  }
  return height;
}

/** Share of the flight's steps that start outside the measured range. */
function shareOutside(knots: Knots): number {
  let outside = 0;
  for (let index = 0; index < knots.count - 1; index += 1) {
    const at = index * STRIDE;
    const d = knots.data;
    if (!forces.measured(d[at + KNOT.vx]!, d[at + KNOT.vy]!, d[at + KNOT.vz]!, d[at + KNOT.spin]!))
      outside += 1;
  }
  return outside / (knots.count - 1);
}
