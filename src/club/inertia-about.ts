import { kgCm2PerGramInch2 } from "./exact-units.ts";
import type { MassOnAxis } from "./mass-on-axis.ts";

/**
 * Moment of inertia in kg cm2 of a mass on the axis about a place on it, in inches from the butt: own inertia and
 * the parallel-axis term. Divide by 10,000 for kg m2.
 */
export function inertiaAbout(mass: MassOnAxis, place: number): number {
  return (mass.spread + mass.weight * (mass.place - place) ** 2) * kgCm2PerGramInch2;
}
