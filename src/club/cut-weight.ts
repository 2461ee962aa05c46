import { type Outcome, unavailable } from "../outcome/problem.ts";
import { checkNumbers } from "./check-number.ts";
import { finite } from "./finite.ts";
import { inInches } from "./in-inches.ts";

/**
 * Weight in grams of a shaft cut to length when nothing but its raw weight and length is known: a uniform shaft
 * loses weight as it loses length. `cutShaft` does better where the balance point was measured.
 *
 * @example cutWeight(120, 40, 36) // 108
 */
export function cutWeight(rawWeight: number, rawLength: number, cutLength: number): Outcome<number> {
  const problem = checkNumbers([
    [rawWeight, { name: "rawWeight", unit: "grams", least: 0, above: true }],
    [rawLength, { name: "rawLength", unit: "inches", least: 0, above: true }],
    [cutLength, { name: "cutLength", unit: "inches", least: 0, above: true }],
  ]);
  if (problem) return problem;
  if (cutLength > rawLength) {
    return unavailable(
      `cutLength is ${inInches(cutLength)}, longer than the raw shaft's ${inInches(rawLength)}.`,
    );
  }
  return finite(rawWeight * (cutLength / rawLength));
}
