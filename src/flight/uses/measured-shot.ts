import type { Strike } from "../trajectory/strike.ts";

/** A shot as a session has it: how it was struck, and what of its flight was measured. Missing figures: left out or NaN. */
export interface MeasuredShot {
  readonly strike: Strike;
  /** m */
  readonly carry?: number;
  /** m */
  readonly height?: number;
  /** degrees */
  readonly landingAngle?: number;
}

/** Tells a measured figure from a missing one. */
export function isMeasured(value: number | undefined): value is number {
  return Number.isFinite(value);
}
