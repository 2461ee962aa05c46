import { normalTail } from "./normal-tail.ts";

/**
 * The probability that a standard normal value exceeds `z`. Small tails keep their digits, down to 1e-300.
 *
 * `normalUpperTail(6)` is 9.8658764503769814e-10.
 */
export function normalUpperTail(z: number): number {
  // Beyond 40 a tail is less than the least there is, and infinity has no parts to take off.
  const near = Math.max(-40, Math.min(40, z));
  // A rounded square would cost the bell its digits, so the part that squares exactly is taken off first
  // (Cody 1969, section 4).
  const exact = Math.trunc(near * 16) / 16;
  const bell = Math.exp(-0.5 * exact * exact) * Math.exp(-0.5 * (near - exact) * (near + exact));
  return normalTail(near, bell);
}
