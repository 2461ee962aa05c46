import { invalid, type Outcome, unavailable } from "../outcome/problem.ts";
import { checkNumbers } from "./check-number.ts";
import { inInches } from "./in-inches.ts";
import type { ShaftTrims } from "./raw-shaft.ts";

/** Tip trim, butt trim and what is left; the three add up to the raw length. */
export interface ResolvedTrims {
  readonly tip: number;
  readonly butt: number;
  readonly cutLength: number;
}

/** A saw cut is not known better than this, in inches: two ways of giving a trim may differ by it (common practice, no source). */
const sawCut = 0.01;

/** The trims with the one that was left out; a problem where the raw shaft is too short for them. */
export function resolveTrims(rawLength: number, trims: ShaftTrims): Outcome<ResolvedTrims> {
  const { tip = 0, butt, cutLength } = trims;
  const problem = checkNumbers([
    [rawLength, { name: "raw length", unit: "inches", least: 0, above: true }],
    [tip, { name: "tip trim", unit: "inches", least: 0 }],
    [butt ?? 0, { name: "butt trim", unit: "inches", least: 0 }],
    [cutLength ?? 1, { name: "cut length", unit: "inches", least: 0, above: true }],
  ]);
  if (problem) return problem;
  // Where one of the two is left out the difference is NaN, and not more than anything.
  if (Math.abs(rawLength - tip - butt! - cutLength!) > sawCut) {
    return invalid(
      `cut length is ${inInches(cutLength!)}, but ${inInches(rawLength)} less ${inInches(tip)} off the tip and ` +
        `${inInches(butt!)} off the butt leaves ${inInches(rawLength - tip - butt!)}; leave one of them out.`,
    );
  }
  const left = cutLength ?? rawLength - tip - (butt ?? 0);
  const off = rawLength - tip - left;
  if (left <= 0 || off < -sawCut) {
    return unavailable(
      `The raw shaft is ${inInches(rawLength)}, too short for ${inInches(tip)} off the tip` +
        (cutLength === undefined
          ? ` and ${inInches(butt ?? 0)} off the butt.`
          : ` and ${inInches(cutLength)} of cut length.`),
    );
  }
  // A shortfall within the saw cut is a rounded entry: the shaft is then as long as it is.
  return off < 0 ? { tip, butt: 0, cutLength: rawLength - tip } : { tip, butt: off, cutLength: left };
}
