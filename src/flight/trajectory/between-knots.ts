import { type Knots, STRIDE } from "./knots.ts";

/**
 * Position along one axis between knot `index` and the next, `part` of the way in time: the polynomial of fifth degree
 * that meets place, velocity and acceleration at both ends. `axis` is 0, 1, 2 for x, y, z.
 */
export function placeBetween(knots: Knots, index: number, axis: number, part: number): number {
  const d = knots.data;
  const from = index * STRIDE;
  const to = from + STRIDE;
  const h = d[to]! - d[from]!;
  const x0 = d[from + 1 + axis]!;
  const first = h * d[from + 4 + axis]!;
  const second = (h * h * d[from + 7 + axis]!) / 2;
  const gap = d[to + 1 + axis]! - x0 - first - second;
  const slope = h * d[to + 4 + axis]! - first - 2 * second;
  const bend = h * h * d[to + 7 + axis]! - 2 * second;
  const c3 = 10 * gap - 4 * slope + bend / 2;
  const c4 = -15 * gap + 7 * slope - bend;
  const c5 = 6 * gap - 3 * slope + bend / 2;
  return x0 + part * (first + part * (second + part * (c3 + part * (c4 + part * c5))));
}

/** Velocity along one axis between two knots: the derivative of `placeBetween`. */
export function velocityBetween(knots: Knots, index: number, axis: number, part: number): number {
  const d = knots.data;
  const from = index * STRIDE;
  const to = from + STRIDE;
  const h = d[to]! - d[from]!;
  const first = h * d[from + 4 + axis]!;
  const second = (h * h * d[from + 7 + axis]!) / 2;
  const gap = d[to + 1 + axis]! - d[from + 1 + axis]! - first - second;
  const slope = h * d[to + 4 + axis]! - first - 2 * second;
  const bend = h * h * d[to + 7 + axis]! - 2 * second;
  const c3 = 10 * gap - 4 * slope + bend / 2;
  const c4 = -15 * gap + 7 * slope - bend;
  const c5 = 6 * gap - 3 * slope + bend / 2;
  return (first + part * (2 * second + part * (3 * c3 + part * (4 * c4 + part * 5 * c5)))) / h;
}

/** Spin between two knots, the cubic through both spins and their rates. */
export function spinBetween(knots: Knots, index: number, part: number): number {
  const d = knots.data;
  const from = index * STRIDE;
  const to = from + STRIDE;
  const h = d[to]! - d[from]!;
  const s0 = d[from + 10]!;
  const s1 = d[to + 10]!;
  const m0 = h * d[from + 11]!;
  const m1 = h * d[to + 11]!;
  const rise = s1 - s0;
  return s0 + part * (m0 + part * (3 * rise - 2 * m0 - m1 + part * (m0 + m1 - 2 * rise)));
}
