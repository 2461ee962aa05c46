import { StepCurve } from "./between-knots.ts";
import { DormandPrinceStep } from "./dormand-prince.ts";
import type { Forces } from "./forces.ts";
import { KNOT, type Knots, STRIDE } from "./knots.ts";

/** How an integration ended. `tooLong`: still in the air at the time limit, or more steps than any flight needs. */
export type Ending = "landed" | "neverReached" | "tooLong";

const MOST_STEPS = 20_000;
/** Seconds a first step may last at a tolerance of 1; most flights accept it. */
const FIRST_STEP = 1;
const step = new DormandPrinceStep();
const upward = new StepCurve();

/**
 * Flies a ball from the origin until it comes down on `ground` (m above the origin) or `limit` seconds are over, and
 * leaves the steps in `knots`; the last one lies past the landing. Steps are as long as `tolerance` allows: the most
 * that one step may err, in metres and metres a second. `start` holds vx, vy, vz and spin.
 */
export function integrate(
  forces: Forces,
  start: Float64Array,
  ground: number,
  limit: number,
  tolerance: number,
  knots: Knots,
): Ending {
  for (let c = 0; c < 4; c += 1) {
    knots.data[c] = 0;
    knots.data[KNOT.vx + c] = start[c]!;
  }
  forces.rate(knots.data, KNOT.vx, knots.data, KNOT.ax);
  knots.count = 1;
  // Stryker disable next-line all: a first step of any length is accepted or cut by its error
  let h = FIRST_STEP * fifthRoot(tolerance);
  // Stryker disable next-line all: it only keeps the next step from growing
  let refused = false;
  for (let turn = 0; turn < MOST_STEPS; turn += 1) {
    knots.reserve();
    const from = (knots.count - 1) * STRIDE;
    const left = limit - knots.data[from]!;
    if (h > left) h = left;
    const error = step.take(forces, knots.data, from, h) / tolerance;
    if (!(error <= 1) && h > 1e-7) {
      // Stryker disable next-line all: how much shorter the next try is costs time only; its error decides
      h *= error > 1 ? Math.max(0.2, 0.9 / fifthRoot(error)) : 0.2;
      // Stryker disable next-line all: it only keeps the next step from growing
      refused = true;
      continue;
    }
    knots.count += 1;
    const ending = endingOf(knots, ground);
    if (ending) return ending;
    if (left <= h) return "tooLong";
    // Stryker disable all: how much longer the next step is tried costs time only; its error decides
    const factor = error > 0 ? 0.9 / fifthRoot(error) : 5;
    h *= refused ? Math.min(1, factor) : Math.min(5, factor);
    refused = false;
    // Stryker restore all
  }
  return "tooLong";
}

/** The power 3/16, near enough to a fifth root for choosing a step, and several times as fast as a power. */
function fifthRoot(value: number): number {
  const eighth = Math.sqrt(Math.sqrt(Math.sqrt(value)));
  return eighth * Math.sqrt(eighth);
}

/** Below the ground and falling: it landed in this step, or it never got as high as the ground. */
function endingOf(knots: Knots, ground: number): Ending | undefined {
  const to = (knots.count - 1) * STRIDE;
  if (knots.data[to + KNOT.y]! >= ground || knots.data[to + KNOT.vy]! >= 0) return undefined;
  // Stryker disable next-line all: saves time only; the top of a step is as high as its start at least
  if (knots.data[to - STRIDE + KNOT.y]! >= ground) return "landed";
  upward.set(knots, knots.count - 2, 1);
  return upward.place(upward.top()) >= ground ? "landed" : "neverReached";
}
