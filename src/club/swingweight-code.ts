import { invalid, type Outcome, unavailable } from "../outcome/problem.ts";
import { swingweightPoints } from "./swingweight-points.ts";
import { swingweightScale } from "./swingweight-scale.ts";

/** A twentieth of a point falls just short of half through binary fractions; this lifts it back over. */
const roundingDust = 1e-9;

/**
 * The swingweight code of an inch-ounce moment, rounded to a tenth of a point (halves up).
 *
 * The scale runs from A0.0 to G9.9. Beyond it there is no code, and the problem gives the moment.
 *
 * @example swingweightCode(213.5) // "D0.0"
 * @example swingweightCode(230.93) // "E0.0": 9.96 points above D0 roll over to the next letter
 */
export function swingweightCode(moment: number): Outcome<string> {
  if (!Number.isFinite(moment))
    return invalid("moment is not a number; it should be inch-ounces, like 213.5.");
  const tenths = Math.floor(swingweightPoints(moment) * 10 + 0.5 + roundingDust);
  const letter = swingweightScale.letters[Math.floor(tenths / 100)];
  if (letter === undefined) {
    return unavailable(
      `A moment of ${moment.toFixed(2)} inch-ounces is beyond the swingweight scale, ` +
        "which runs from A0.0 (161.00) to G9.9 (283.33).",
    );
  }
  return `${letter}${((tenths % 100) / 10).toFixed(1)}`;
}
