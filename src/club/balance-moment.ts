import { gramsPerOunce } from "./exact-units.ts";

/**
 * The moment in inch-ounces of a weight in grams, its balance point in inches from the butt, about a fulcrum in
 * inches from the butt: what a swingweight scale weighs. Negative where the balance point is on the butt side.
 *
 * @example balanceMoment(430, 29.1, 14) // 229.03
 */
export function balanceMoment(weight: number, balance: number, fulcrum: number): number {
  return (weight / gramsPerOunce) * (balance - fulcrum);
}
