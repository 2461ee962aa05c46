import { swingweightScale } from "./swingweight-scale.ts";

/**
 * Points above A0.0 of an inch-ounce moment, as a continuous figure that may lie beyond the scale: 30 for D0.0.
 * Good for differences and for clubs so light that they have no code.
 */
export function swingweightPoints(moment: number): number {
  return (moment - swingweightScale.lowest) / swingweightScale.point;
}
