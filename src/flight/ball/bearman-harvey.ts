import { BEARMAN_HARVEY_TABLE } from "./bearman-harvey-table.ts";
import type { CoefficientModel } from "./coefficient-model.ts";

const SPEEDS = Float64Array.from(BEARMAN_HARVEY_TABLE.speed);
const SLOWEST = SPEEDS[0]!;
const FASTEST = SPEEDS[SPEEDS.length - 1]!;
export const LEAST_SPIN = 2000;
export const MOST_SPIN = 6000;
const SPIN_STEP = 200;
const LAST_ROW = BEARMAN_HARVEY_TABLE.spin.length - 2;
const WIDTH = SPEEDS.length;
const DRAG = Float64Array.from(BEARMAN_HARVEY_TABLE.drag.flat());
const LIFT = Float64Array.from(BEARMAN_HARVEY_TABLE.lift.flat());

/** Column to the left of each whole m/s, so that no search is needed: at most one step to the right remains. */
const COLUMN = Uint8Array.from({ length: Math.ceil(FASTEST) + 1 }, (_, speed) => {
  const right = SPEEDS.findIndex((edge) => edge > speed);
  return Math.max(0, (right < 0 ? WIDTH - 1 : right) - 1);
});

/** Looks both coefficients up, bilinear in speed and spin; beyond an edge of the table its edge value holds. */
export function lookUp(speed: number, spin: number, out: Float64Array): void {
  const v = speed < SLOWEST ? SLOWEST : speed > FASTEST ? FASTEST : speed;
  const w = spin < LEAST_SPIN ? LEAST_SPIN : spin > MOST_SPIN ? MOST_SPIN : spin;
  let column = COLUMN[v | 0]!;
  if (column < WIDTH - 2 && v >= SPEEDS[column + 1]!) column += 1;
  const place = (w - LEAST_SPIN) / SPIN_STEP;
  let row = place | 0;
  if (row > LAST_ROW) row = LAST_ROW;
  const across = (v - SPEEDS[column]!) / (SPEEDS[column + 1]! - SPEEDS[column]!);
  const down = place - row;
  const at = row * WIDTH + column;
  const upperLeft = (1 - across) * (1 - down);
  const upperRight = across * (1 - down);
  const lowerLeft = (1 - across) * down;
  const lowerRight = across * down;
  out[0] =
    upperLeft * DRAG[at]! +
    upperRight * DRAG[at + 1]! +
    lowerLeft * DRAG[at + WIDTH]! +
    lowerRight * DRAG[at + WIDTH + 1]!;
  out[1] =
    upperLeft * LIFT[at]! +
    upperRight * LIFT[at + 1]! +
    lowerLeft * LIFT[at + WIDTH]! +
    lowerRight * LIFT[at + WIDTH + 1]!;
}

function measured(speed: number, spin: number): boolean {
  return speed >= SLOWEST && speed <= FASTEST && spin >= LEAST_SPIN && spin <= MOST_SPIN;
}

/** The wind-tunnel table as it stands, edge values held beyond it: 13.7 to 88.1 m/s, 2,000 to 6,000 rpm. */
export const BEARMAN_HARVEY: CoefficientModel = {
  name: "Bearman-Harvey 1976",
  source: "Bearman and Harvey, Aeronautical Quarterly 27, 1976",
  coefficients: (speed, spin, _reynolds, out) => lookUp(speed, spin, out),
  measured,
};

/**
 * The wind-tunnel table, extended to the spin of irons and to balls that hardly spin. The model used when none is
 * named.
 *
 * - Above 6,000 rpm the coefficients are those the table gives at 6,000 rpm and the same spin ratio, that is at
 *   speed x 6000 / spin. Drag and lift of a spinning ball go mainly by spin ratio once the boundary layer is turbulent,
 *   and the table reaches a ratio of 0.98 where a wedge needs 0.5; the price is a lower Reynolds number.
 * - Below 2,000 rpm the lift at 2,000 rpm is scaled by the ratio of the spins to the power 0.4, the shape of Smits
 *   and Smith (1994), so that a ball without spin has no lift; the drag is held. The two tables of Bearman and Harvey's
 *   curves against spin ratio fall in the same way down to a ratio of 0.02.
 * - Beyond its speeds the edge of the table holds.
 *
 * Each extension meets the table at the boundary. `measured` says where a flight leaves the table.
 */
export const EXTENDED_BEARMAN_HARVEY: CoefficientModel = {
  name: "Bearman-Harvey 1976, extended",
  source: "Bearman and Harvey, Aeronautical Quarterly 27, 1976; extended by spin ratio",
  coefficients(speed, spin, _reynolds, out) {
    if (spin > MOST_SPIN) {
      lookUp((speed * MOST_SPIN) / spin, MOST_SPIN, out);
      return;
    }
    lookUp(speed, spin, out);
    if (spin < LEAST_SPIN) out[1]! *= (spin / LEAST_SPIN) ** 0.4;
  },
  measured,
};
