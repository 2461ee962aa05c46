import type { Outcome } from "../../outcome/problem.ts";
import { spinAxis } from "../impact/spin-axis.ts";
import { spinLoft } from "../impact/spin-loft.ts";

/** Spin loft in degrees as a worksheet asks for it; face and path count as 0 when left out. */
export function spinLoftOf(dynamicLoft: number, attack: number, face = 0, path = 0): Outcome<number> {
  return spinLoft({ dynamicLoft, attack, face, path });
}

/** Tilt of the spin axis in degrees as a worksheet asks for it, positive to the right. */
export function spinAxisOf(dynamicLoft: number, attack: number, face: number, path: number): Outcome<number> {
  return spinAxis({ dynamicLoft, attack, face, path });
}
