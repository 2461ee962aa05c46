import type { Outcome } from "../outcome/problem.ts";
import { balanceMoment } from "./balance-moment.ts";
import { checkNumbers } from "./check-number.ts";
import { swingweightCode } from "./swingweight-code.ts";
import { swingweightScale } from "./swingweight-scale.ts";

/**
 * The swingweight code of a club from its total weight (grams) and its balance point (inches from the butt).
 *
 * `fulcrum` is where the scale carries the club, in inches from the butt. The letters are defined about 14 inches.
 * With another fulcrum, the older 12-inch one say, the moment about it is read off the same inch-ounce scale: such
 * codes compare with each other, never with 14-inch codes. No published table of codes for 12 inches is known here.
 *
 * @example swingweight(430, 29.1) // "D8.9", of 229.03 inch-ounces
 */
export function swingweight(
  weight: number,
  balance: number,
  fulcrum: number = swingweightScale.fulcrum,
): Outcome<string> {
  const problem = checkNumbers([
    [weight, { name: "weight", unit: "grams", least: 0, above: true }],
    [balance, { name: "balance", unit: "inches from the butt", least: 0, above: true }],
    [fulcrum, { name: "fulcrum", unit: "inches from the butt", least: 0 }],
  ]);
  return problem ?? swingweightCode(balanceMoment(weight, balance, fulcrum));
}
