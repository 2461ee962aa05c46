import { BEARMAN_HARVEY } from "./bearman-harvey.ts";
import { BEARMAN_HARVEY_TABLE } from "./bearman-harvey-table.ts";
import { type CoefficientModel, POINT } from "./coefficient-model.ts";
import { bicubicPatches, splineSlopes } from "./smooth-table.ts";

const SPINS = BEARMAN_HARVEY_TABLE.spin;
const SPEEDS = Float64Array.from(BEARMAN_HARVEY_TABLE.speed);
const WIDTH = SPEEDS.length;
const SLOWEST = SPEEDS[0]!;
const FASTEST = SPEEDS[9]!;
const LEAST_SPIN = SPINS[0];
const MOST_SPIN = SPINS[20];
const ROWS_PER_RPM = 1 / 200;
const LAST_ROW = SPINS.length - 2;
/** How the lift falls with spin ratio below the table: the power of Smits and Smith (1994). */
const LIFT_POWER = 0.4;

const INVERSE_WIDTH = Float64Array.from(SPEEDS.subarray(1), (edge, at) => 1 / (edge - SPEEDS[at]!));
/** Patch after patch, 16 figures for the drag and then 16 for the lift, so that both lie side by side in memory. */
const PATCHES = interleaved(
  smoothSurface(BEARMAN_HARVEY_TABLE.drag, 0),
  smoothSurface(BEARMAN_HARVEY_TABLE.lift, LIFT_POWER),
);
/** The cubics along the table's first and last row, column after column, drag before lift: all that extensions need. */
const LEAST_EDGE = edgeOf(PATCHES, 0, 0);
const MOST_EDGE = edgeOf(PATCHES, LAST_ROW, 1);

/** Column to the left of each whole m/s, so that no search is needed: at most one step to the right remains. */
const COLUMN = Uint8Array.from({ length: Math.ceil(FASTEST) + 1 }, (_, speed) => {
  const right = SPEEDS.findIndex((edge) => edge > speed);
  return Math.max(0, (right < 0 ? WIDTH - 1 : right) - 1);
});

/**
 * The wind-tunnel table of Bearman and Harvey (1976) made smooth and extended to the spin of irons and to balls that
 * hardly spin. The model used when none is named.
 *
 * - Inside the table a surface without kinks, of cubic splines, goes through every figure of it. A flight then needs
 *   fewer steps for the same error than with straight lines between the figures. Those lie above a curve that sags; for
 *   the drives and long irons of the table the carry differs by 0.4 yd on average and 1 yd at most.
 * - Above 6,000 rpm the coefficients are those at 6,000 rpm and the same spin ratio, that is at speed x 6000 / spin.
 *   Drag and lift go mainly by spin ratio once the boundary layer is turbulent, and the table reaches a ratio of 0.98
 *   where a wedge needs 0.5. The price is a lower Reynolds number. The table's own slopes with spin at 6,000 rpm are near
 *   those this rule implies: at 55 m/s 2.1e-5 a rpm against 2.3e-5 for drag, 2.4e-5 against 2.8e-5 for lift.
 * - Below 2,000 rpm the drag is held and the lift falls as spin to the power 0.4, the shape of Smits and Smith (1994):
 *   a ball without spin has no lift. A second transcription of the same curves falls by that shape within 0.02.
 * - Beyond the speeds of the table, 13.7 and 88.1 m/s, its edge holds.
 *
 * Each extension meets the table in value and slope. `measured` says where a flight leaves the table.
 */
export const EXTENDED_BEARMAN_HARVEY: CoefficientModel = {
  name: "Bearman-Harvey 1976, extended",
  source: `${BEARMAN_HARVEY.source}; smoothed, extended by spin ratio`,
  coefficients(point) {
    const speed = point[POINT.speed]!;
    const spin = point[POINT.spin]!;
    let v = spin > MOST_SPIN ? (speed * MOST_SPIN) / spin : speed;
    if (v < SLOWEST) v = SLOWEST;
    else if (v > FASTEST) v = FASTEST;
    let column = COLUMN[v | 0]!;
    if (column < WIDTH - 2 && v >= SPEEDS[column + 1]!) column += 1;
    const across = (v - SPEEDS[column]!) * INVERSE_WIDTH[column]!;
    const a2 = across * across;
    // Written out, a coefficient after the other: a call would put its numbers on the heap wherever it is not inlined.
    if (spin <= LEAST_SPIN || spin >= MOST_SPIN) {
      const p = spin <= LEAST_SPIN ? LEAST_EDGE : MOST_EDGE;
      const at = column * 8;
      point[POINT.drag] = p[at]! + across * p[at + 1]! + a2 * (p[at + 2]! + across * p[at + 3]!);
      point[POINT.lift] = p[at + 4]! + across * p[at + 5]! + a2 * (p[at + 6]! + across * p[at + 7]!);
      if (spin < LEAST_SPIN) point[POINT.lift]! *= (spin / LEAST_SPIN) ** LIFT_POWER;
      return;
    }
    const place = (spin - LEAST_SPIN) * ROWS_PER_RPM;
    const row = place | 0;
    const down = place - row;
    const d2 = down * down;
    const p = PATCHES;
    let at = (row * (WIDTH - 1) + column) * 32;
    for (let of: number = POINT.drag; of <= POINT.lift; of += 1, at += 16) {
      const r0 = p[at]! + across * p[at + 1]! + a2 * (p[at + 2]! + across * p[at + 3]!);
      const r1 = p[at + 4]! + across * p[at + 5]! + a2 * (p[at + 6]! + across * p[at + 7]!);
      const r2 = p[at + 8]! + across * p[at + 9]! + a2 * (p[at + 10]! + across * p[at + 11]!);
      const r3 = p[at + 12]! + across * p[at + 13]! + a2 * (p[at + 14]! + across * p[at + 15]!);
      point[of] = r0 + down * r1 + d2 * (r2 + down * r3);
    }
  },
  measured: BEARMAN_HARVEY.measured,
};

/**
 * The patches of one coefficient. The slopes at the edges are those of what lies beyond: none with speed; with spin,
 * that of the power below and that of the same spin ratio above.
 */
function smoothSurface(table: readonly (readonly number[])[], power: number): Float64Array {
  const value = Float64Array.from(table.flat());
  const column = (of: ArrayLike<number>, at: number) =>
    Float64Array.from({ length: SPINS.length }, (_, row) => of[row * WIDTH + at]!);
  const across = Float64Array.from(table.flatMap((row) => [...splineSlopes(SPEEDS, row, 0, 0)]));
  const down = new Float64Array(value.length);
  const lastRow = value.length - WIDTH;
  SPEEDS.forEach((speed, at) => {
    const first = (power * value[at]!) / LEAST_SPIN;
    const last = (-speed * across[lastRow + at]!) / MOST_SPIN;
    splineSlopes(SPINS, column(value, at), first, last).forEach((slope, row) => {
      down[row * WIDTH + at] = slope;
    });
  });
  const cross = Float64Array.from(
    SPINS.flatMap((_, row) => [...splineSlopes(SPEEDS, down.subarray(row * WIDTH, (row + 1) * WIDTH), 0, 0)]),
  );
  return bicubicPatches(SPINS, SPEEDS, { value, across, down, cross });
}

/** The patches of one row at the height `down` in them, where only the way across is left. */
function edgeOf(patches: Float64Array, row: number, down: 0 | 1): Float64Array {
  const first = row * (WIDTH - 1) * 32;
  return Float64Array.from({ length: (WIDTH - 1) * 8 }, (_, place) => {
    const at = first + (place >> 2) * 16 + (place & 3);
    const higher = patches[at + 4]! + patches[at + 8]! + patches[at + 12]!;
    return patches[at]! + down * higher;
  });
}

function interleaved(drag: Float64Array, lift: Float64Array): Float64Array {
  const both = new Float64Array(drag.length * 2);
  for (let at = 0; at < drag.length; at += 16) {
    both.set(drag.subarray(at, at + 16), at * 2);
    both.set(lift.subarray(at, at + 16), at * 2 + 16);
  }
  return both;
}
