import gammaRatio from "@stdlib/math-base-special-gamma-delta-ratio";
import { normalUpperTail } from "./normal-upper-tail.ts";
import { tQuantile } from "./t-quantile.ts";
import { tUpperTail } from "./t-upper-tail.ts";

/** How likely each value of an unknown mean is: a symmetric standard shape, shifted and stretched. */
export interface Belief {
  readonly centre: number;
  readonly scale: number;
  /** Of the standard shape. */
  readonly density: (z: number) => number;
  readonly upperTail: (z: number) => number;
  /** Beyond this many scales lies less than 1e-17. */
  readonly reach: number;
}

/** A mean known up to a normal error. */
export function normalBelief(centre: number, scale: number): Belief {
  return { centre, scale, density: normalDensity, upperTail: normalUpperTail, reach: 8.5 };
}

/** A mean known up to an error that is Student's t. */
export function tBelief(centre: number, scale: number, df: number): Belief {
  const height = gammaRatio((df + 1) / 2, -0.5) / Math.sqrt(Math.PI * df);
  return {
    centre,
    scale,
    density: (z) => height * Math.exp((-(df + 1) / 2) * Math.log1p((z * z) / df)),
    upperTail: (z) => tUpperTail(z, df),
    reach: -tQuantile(1e-17, df),
  };
}

function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}
