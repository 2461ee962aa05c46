import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { AssembledClub } from "./assemble-club.ts";
import { checkNumber } from "./check-number.ts";
import { swingweightMoment } from "./swingweight-moment.ts";

/** What a club is built to. */
export type ClubTarget =
  | { readonly kind: "swingweight"; readonly code: string }
  /** Inch-ounces about 14 inches: a swingweight with all its digits. */
  | { readonly kind: "moment"; readonly moment: number }
  /** kg cm2 about the butt. */
  | { readonly kind: "inertia"; readonly inertia: number };

/** The figure to reach, and the same figure of a club: inch-ounces about 14 inches, or kg cm2 about the butt. */
export interface TargetMeasure {
  readonly wanted: number;
  readonly of: (club: AssembledClub) => number;
  /** The figure for people: "217.00 in-oz". */
  readonly say: (figure: number) => string;
}

/** Turns a target into the figure to reach. */
export function targetMeasure(target: ClubTarget): Outcome<TargetMeasure> {
  if (target.kind === "inertia") {
    const problem = checkNumber(target.inertia, { name: "inertia", unit: "kg cm2", least: 0, above: true });
    if (problem) return problem;
    return {
      wanted: target.inertia,
      of: (club) => club.inertiaButt,
      say: (figure) => `${figure.toFixed(0)} kg cm2`,
    };
  }
  const wanted = target.kind === "moment" ? target.moment : swingweightMoment(target.code);
  if (isProblem(wanted)) return wanted;
  const problem = checkNumber(wanted, { name: "moment", unit: "inch-ounces about 14 inches" });
  if (problem) return problem;
  return { wanted, of: (club) => club.moment14, say: (figure) => `${figure.toFixed(2)} in-oz` };
}
