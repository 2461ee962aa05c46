import { isProblem, type Outcome } from "../outcome/problem.ts";
import { checkNumbers } from "./check-number.ts";
import { cutRod } from "./cut-rod.ts";
import type { RawShaft, ShaftTrims } from "./raw-shaft.ts";
import { type ResolvedTrims, resolveTrims } from "./resolve-trims.ts";
import { rodMass } from "./rod-mass.ts";
import { shaftBalance } from "./shaft-balance.ts";
import { taperedRod } from "./tapered-rod.ts";
import { trimWarnings } from "./trim-warnings.ts";

/** A shaft after the saw. */
export interface CutShaft extends ResolvedTrims {
  /** Grams. */
  readonly weight: number;
  /** Inches from the cut butt. */
  readonly balance: number;
  /** Inertia about its own balance point, in gram inches squared. */
  readonly spread: number;
  /** Where a trim passes what is entered as the maker's limit. */
  readonly warnings: readonly string[];
}

/**
 * Weight and balance point of a shaft after cutting, from the straight-line density that its raw weight, length and
 * balance point fix (see `taperedRod`); uniform where the balance point is not known.
 *
 * @example cutShaft({ weight: 120, length: 40 }, { tip: 2, cutLength: 36 }) // weight 108, balance 18, butt trim 2
 */
export function cutShaft(raw: RawShaft, trims: ShaftTrims = {}): Outcome<CutShaft> {
  const problem = checkNumbers([
    [raw.weight, { name: "shaft weight", unit: "grams", least: 0, above: true }],
    [raw.length, { name: "shaft length", unit: "inches", least: 0, above: true }],
  ]);
  if (problem) return problem;
  const cut = resolveTrims(raw.length, trims);
  if (isProblem(cut)) return cut;
  const balance = shaftBalance(raw);
  if (isProblem(balance)) return balance;
  const rod = taperedRod(raw.weight, 0, raw.length, balance);
  const left = rodMass("shaft", cutRod(rod, cut.butt, cut.butt + cut.cutLength));
  return {
    ...cut,
    weight: left.weight,
    balance: left.place - cut.butt,
    spread: left.spread,
    warnings: trimWarnings(trims, cut),
  };
}
