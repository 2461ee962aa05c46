/** A stretch of figures that suits, and how far outside it a figure is still worth something. */
export interface Window {
  readonly from: number;
  readonly to: number;
  /** Beyond the stretch by this much a figure is worth nothing. */
  readonly margin: number;
}

/**
 * How desirable a figure is, from 0 to 1: 1 inside the window, falling in a straight line to 0 at the margin. The
 * two-sided desirability of Derringer and Suich 1980 (Journal of Quality Technology 12, 214-219) with exponent 1 and
 * a stretch, not a point, for a target.
 *
 * `desirability(43, { from: 44, to: 52, margin: 4 })` is 0.75.
 */
export function desirability(value: number, { from, to, margin }: Window): number {
  const outside = Math.max(from - value, value - to, 0);
  return Math.max(0, 1 - outside / margin);
}

/** The least that one figure counts for, so that a single one out of reach marks a shot down but hides no other. */
const FLOOR = 0.05;

/** Several desirabilities as one: their geometric mean (Derringer and Suich 1980), each at least a twentieth. */
export function overallDesirability(parts: readonly number[]): number {
  const logs = parts.reduce((sum, part) => sum + Math.log(Math.max(FLOOR, part)), 0);
  return Math.exp(logs / parts.length);
}
