import { invalid, type Outcome } from "../outcome/problem.ts";
import { swingweightScale } from "./swingweight-scale.ts";

/**
 * Points above A0.0 of a code: a letter A to G and 0 to less than 10, decimals allowed, either case, blanks around
 * and between ignored. `D2.3` gives 32.3.
 */
export function pointsOfCode(code: string): Outcome<number> {
  const match = /^\s*([A-G])\s*(\d(?:[.,]\d*)?)\s*$/i.exec(String(code));
  if (!match) {
    return invalid(
      `swingweight "${code}" is no code; it should be a letter A to G and points 0 to 9.9, like D2 or D2.3.`,
    );
  }
  const letter = swingweightScale.letters.indexOf(match[1]!.toUpperCase());
  return letter * 10 + Number(match[2]!.replace(",", "."));
}
