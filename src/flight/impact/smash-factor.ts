import type { Outcome } from "../../outcome/problem.ts";
import { within } from "../within.ts";
import { RADIANS } from "./delivery.ts";
import { type Head, normalGain, tangentialGain } from "./head.ts";

/**
 * Ball speed over club speed for a head of an effective mass (kg) and restitution, at a spin loft in degrees. Rigid
 * bodies: restitution along the normal of the face, rolling along the face.
 *
 * @example smashFactor(0.2, 0.83, 0) // 1.4883
 */
export function smashFactor(effectiveMass: number, restitution: number, spinLoft: number): Outcome<number> {
  const problem =
    within("effective mass", effectiveMass, 0.02, 1, "kg") ??
    within("restitution", restitution, 0, 1) ??
    within("spin loft", spinLoft, 0, 90, "degrees");
  if (problem) return problem;
  const head: Head = { effectiveMass, restitution };
  const normal = normalGain(head) * Math.cos(spinLoft * RADIANS);
  const along = tangentialGain(head) * Math.sin(spinLoft * RADIANS);
  return Math.sqrt(normal * normal + along * along);
}
