import { invalid, type Outcome } from "../outcome/problem.ts";
import { checkNumber, computable } from "./check-number.ts";
import { inInches } from "./in-inches.ts";
import type { RawShaft } from "./raw-shaft.ts";

/**
 * Balance point of a raw shaft in inches from its butt: as measured, or from its taper, or half the length.
 *
 * A density that runs straight from 1 at the butt to `taper` at the tip balances at
 * length (1 + 2 taper) / (3 (1 + taper)), the centroid of a trapezium.
 */
export function shaftBalance(shaft: RawShaft): Outcome<number> {
  const { balance, taper, length } = shaft;
  if (balance !== undefined && taper !== undefined) {
    return invalid("shaft has both a balance point and a taper; it should have one of them.");
  }
  if (taper !== undefined) {
    const problem = checkNumber(taper, { name: "shaft taper", unit: "a share", least: 0 });
    return problem ?? (length * (1 + 2 * taper)) / (3 * (1 + taper));
  }
  if (balance === undefined) return length / 2;
  const share = balance / length;
  if (share > computable.least && share < 1 - computable.least) return balance;
  return invalid(
    `shaft balance point is ${inInches(balance)}; it should be inches from the butt, more than 0 in and less than ${inInches(length)}.`,
  );
}
