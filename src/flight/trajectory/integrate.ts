import { StepCurve } from "./between-knots.ts";
import { DormandPrinceStep } from "./dormand-prince.ts";
import type { Forces } from "./forces.ts";
import { KNOT, type Knots, STRIDE } from "./knots.ts";

/** How an integration ended. `tooLong`: still in the air at the time limit, or more steps than any flight needs. */
export type Ending = "landed" | "neverReached" | "tooLong";

const MOST_STEPS = 20_000;
const FIRST_STEP = 0.05;
const step = new DormandPrinceStep();
const here = new Float64Array(7);
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
  knots.count = 0;
  here.fill(0, 0, 3);
  for (let c = 0; c < 4; c += 1) here[3 + c] = start[c]!;
  forces.rate(here[3]!, here[4]!, here[5]!, here[6]!, step.rates, 0);
  record(knots, 0, 0);
  let time = 0;
  let h = FIRST_STEP;
  let refused = false;
  for (let turn = 0; turn < MOST_STEPS; turn += 1) {
    if (time + h > limit) h = limit - time;
    const error = step.take(forces, here, h) / tolerance;
    const factor = error > 0 ? 0.9 * error ** -0.2 : 5;
    if (error > 1 && h > 1e-7) {
      h *= Math.max(0.2, factor);
      refused = true;
      continue;
    }
    time += h;
    here.set(step.end);
    for (let c = 0; c < 4; c += 1) step.rates[c] = step.rates[24 + c]!;
    record(knots, time, 0);
    const ending = endingOf(knots, ground);
    if (ending) return ending;
    if (time >= limit) return "tooLong";
    h *= refused ? Math.min(1, factor) : Math.min(5, factor);
    refused = false;
  }
  return "tooLong";
}

function record(knots: Knots, time: number, ratesAt: number): void {
  const at = knots.add();
  const data = knots.data;
  data[at] = time;
  for (let c = 0; c < 6; c += 1) data[at + 1 + c] = here[c]!;
  for (let c = 0; c < 3; c += 1) data[at + 7 + c] = step.rates[ratesAt + c]!;
  data[at + KNOT.spin] = here[6]!;
  data[at + KNOT.slowing] = step.rates[ratesAt + 3]!;
}

/** Below the ground and falling: it landed in this step, or it never got as high as the ground. */
function endingOf(knots: Knots, ground: number): Ending | undefined {
  const to = (knots.count - 1) * STRIDE;
  if (knots.data[to + KNOT.y]! >= ground || knots.data[to + KNOT.vy]! >= 0) return undefined;
  const last = knots.count - 2;
  upward.set(knots, last, 1);
  return upward.place(upward.top()) >= ground ? "landed" : "neverReached";
}
