import { placeBetween, velocityBetween } from "./between-knots.ts";
import { KNOT, type Knots, STRIDE } from "./knots.ts";

/** Where in a step the ball stops rising, 0 to 1; 0 when it does not rise at the start of the step. */
export function topOfStep(knots: Knots, index: number): number {
  const from = index * STRIDE;
  const rises = knots.data[from + KNOT.vy]!;
  const lifted = knots.data[from + KNOT.ay]!;
  if (rises < 0 || (rises === 0 && lifted <= 0)) return 0;
  let low = rises === 0 ? 1e-6 : 0;
  let high = 1;
  for (let turn = 0; turn < 60 && high - low > 1e-14; turn += 1) {
    const middle = (low + high) / 2;
    if (velocityBetween(knots, index, 1, middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Where in a step the falling ball meets the ground, given that it is above at `from` and below at the end: Newton's
 * method, kept inside a shrinking bracket.
 */
export function groundInStep(knots: Knots, index: number, from: number, ground: number): number {
  const h = knots.data[(index + 1) * STRIDE]! - knots.data[index * STRIDE]!;
  let low = from;
  let high = 1;
  let part = (low + high) / 2;
  for (let turn = 0; turn < 80; turn += 1) {
    const above = placeBetween(knots, index, 1, part) - ground;
    if (above > 0) low = part;
    else high = part;
    const next = part - above / (h * velocityBetween(knots, index, 1, part));
    const kept = next > low && next < high ? next : (low + high) / 2;
    if (Math.abs(kept - part) < 1e-13) return kept;
    part = kept;
  }
  return part;
}
