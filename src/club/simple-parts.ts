import { invalid, type Outcome } from "../outcome/problem.ts";
import { checkNumbers } from "./check-number.ts";
import { type ClubParts, usualGripLength } from "./club-parts.ts";
import { inInches } from "./in-inches.ts";

/**
 * The parts of a club of which only the main figures are known. Head and tip weight sit at the club's end, the butt
 * weight at the butt; the cut shaft reaches from butt to end with the straight-line density its balance point asks
 * for; the grip is a uniform 27 cm.
 */
export function simpleParts(
  length: number,
  head: number,
  shaft: number,
  shaftBalance: number,
  grip: number,
  tip = 0,
  butt = 0,
): Outcome<ClubParts> {
  const problem = checkNumbers([
    [length, { name: "length", unit: "inches", least: 0, above: true }],
    [head, { name: "head", unit: "grams", least: 0 }],
    [shaft, { name: "shaft", unit: "grams", least: 0, above: true }],
    [shaftBalance, { name: "shaftBalance", unit: "inches from the butt", least: 0, above: true }],
    [grip, { name: "grip", unit: "grams", least: 0 }],
    [tip, { name: "tip", unit: "grams", least: 0 }],
    [butt, { name: "butt", unit: "grams", least: 0 }],
  ]);
  if (problem) return problem;
  if (length < usualGripLength) {
    return invalid(
      `length is ${inInches(length)}; it should be inches, and longer than the grip's 10.63 in.`,
    );
  }
  if (shaftBalance >= length) {
    return invalid(
      `shaftBalance is ${inInches(shaftBalance)}; it should be less than the length, ${inInches(length)}.`,
    );
  }
  return {
    length,
    head: { weight: head },
    shaft: { weight: shaft, length, balance: shaftBalance },
    grip: { weight: grip },
    tipWeight: { weight: tip },
    buttWeight: { weight: butt },
  };
}
