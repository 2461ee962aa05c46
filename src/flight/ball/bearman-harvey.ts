import { BEARMAN_HARVEY_TABLE } from "./bearman-harvey-table.ts";
import { type CoefficientModel, POINT } from "./coefficient-model.ts";

const { speed: SPEEDS, spin: SPINS, drag: DRAG, lift: LIFT } = BEARMAN_HARVEY_TABLE;
const SLOWEST = SPEEDS[0];
const FASTEST = SPEEDS[9];
const LEAST_SPIN = SPINS[0];
const MOST_SPIN = SPINS[20];
const SPIN_STEP = 200;

/**
 * The wind-tunnel table of Bearman and Harvey (1976) as it stands: bilinear in speed and spin, and beyond an edge the
 * value at the edge. Measured from 13.7 to 88.1 m/s and 2,000 to 6,000 rpm.
 */
export const BEARMAN_HARVEY: CoefficientModel = {
  name: "Bearman-Harvey 1976",
  source: "Bearman and Harvey, Aeronautical Quarterly 27, 1976",
  coefficients(point) {
    const speed = point[POINT.speed]!;
    const spin = point[POINT.spin]!;
    const v = Math.min(Math.max(speed, SLOWEST), FASTEST);
    const place = (Math.min(Math.max(spin, LEAST_SPIN), MOST_SPIN) - LEAST_SPIN) / SPIN_STEP;
    let column = 0;
    while (column < SPEEDS.length - 2 && v >= SPEEDS[column + 1]!) column += 1;
    const row = Math.min(Math.floor(place), SPINS.length - 2);
    const across = (v - SPEEDS[column]!) / (SPEEDS[column + 1]! - SPEEDS[column]!);
    point[POINT.drag] = bilinear(DRAG, row, column, place - row, across);
    point[POINT.lift] = bilinear(LIFT, row, column, place - row, across);
  },
  measured: (speed, spin) => speed >= SLOWEST && speed <= FASTEST && spin >= LEAST_SPIN && spin <= MOST_SPIN,
};

function bilinear(
  table: readonly (readonly number[])[],
  row: number,
  column: number,
  down: number,
  across: number,
): number {
  const upper = table[row]!;
  const lower = table[row + 1]!;
  const above = upper[column]! + across * (upper[column + 1]! - upper[column]!);
  const below = lower[column]! + across * (lower[column + 1]! - lower[column]!);
  return above + down * (below - above);
}
