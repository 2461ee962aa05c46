import type { MassOnAxis } from "./mass-on-axis.ts";
import type { TaperedRod } from "./tapered-rod.ts";

/**
 * Weight, balance point and own inertia of a rod with a straight-line density: the integrals of density, density
 * times x and density times x squared over its length. For a uniform rod they are the textbook's length / 2 and
 * weight length^2 / 12.
 */
export function rodMass(part: string, rod: TaperedRod): MassOnAxis {
  const length = rod.end - rod.start;
  const { startDensity: near, endDensity: far } = rod;
  const weight = (length * (near + far)) / 2;
  if (weight === 0) return { part, weight: 0, place: rod.start, spread: 0 };
  const centre = (length ** 2 * (near + 2 * far)) / 6 / weight;
  const aboutStart = (length ** 3 * (near + 3 * far)) / 12;
  return { part, weight, place: rod.start + centre, spread: aboutStart - weight * centre ** 2 };
}
