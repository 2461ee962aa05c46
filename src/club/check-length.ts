import type { Outcome } from "../outcome/problem.ts";
import { checkNumber } from "./check-number.ts";
import { inInches } from "./in-inches.ts";

/** Whether a club's length is within the Rules of Golf, and the sentence to print beside it. */
export interface LengthCheck {
  readonly conforms: boolean;
  readonly message: string;
}

/** Bounds of a club's length in inches: Equipment Rules of the R&A and the USGA, Part 2, Section 1c. */
export const lengthRule = { least: 18, greatest: 48 } as const;

/**
 * A club's length against the Equipment Rules (R&A and USGA), Part 2, Section 1c: at least 18 inches (0.457 m) and,
 * except for putters, at most 48 inches (1.219 m). Both bounds conform. A committee may set 46 inches by local rule,
 * and may allow a player with a physical need more than 48 (Part 7): ask before play.
 */
export function checkLength(length: number, isPutter = false): Outcome<LengthCheck> {
  const problem = checkNumber(length, { name: "length", unit: "inches", least: 0, above: true });
  if (problem) return problem;
  const section = "(Equipment Rules, Part 2, Section 1c)";
  if (length < lengthRule.least) {
    return {
      conforms: false,
      message: `${inInches(length)} is under ${inInches(lengthRule.least)}, the least that a club must have ${section}.`,
    };
  }
  if (!isPutter && length > lengthRule.greatest) {
    return {
      conforms: false,
      message: `${inInches(length)} is over ${inInches(lengthRule.greatest)}, the most that a club other than a putter may have ${section}.`,
    };
  }
  return { conforms: true, message: `${inInches(length)} is within the Rules ${section}.` };
}
