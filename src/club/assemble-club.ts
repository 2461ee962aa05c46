import { isProblem, type Outcome } from "../outcome/problem.ts";
import { balanceMoment } from "./balance-moment.ts";
import { checkNumber } from "./check-number.ts";
import { clubMasses } from "./club-masses.ts";
import type { ClubParts } from "./club-parts.ts";
import { inertiaAbout } from "./inertia-about.ts";
import type { MassOnAxis } from "./mass-on-axis.ts";
import { swingweightCode } from "./swingweight-code.ts";
import { swingweightScale } from "./swingweight-scale.ts";

/** What one part brings to the club. The parts' weights, moments and inertias add up to the club's. */
export interface PartShare {
  readonly part: string;
  /** Grams. */
  readonly weight: number;
  /** Balance point in inches from the butt. */
  readonly place: number;
  /** Inch-ounces about 14 inches; negative on the butt side. */
  readonly moment: number;
  /** The same in swingweight points. */
  readonly points: number;
  /** kg cm2 about the butt. */
  readonly inertia: number;
}

/** A club's figures, computed from its parts. */
export interface AssembledClub {
  /** Grams. */
  readonly weight: number;
  /** Inches from the butt. */
  readonly balance: number;
  /** Inch-ounces about a fulcrum 14 inches from the butt. */
  readonly moment14: number;
  /** Code of `moment14`; a problem for a club beyond the scale, whose other figures stand all the same. */
  readonly swingweight: Outcome<string>;
  /** Inch-ounces about the older 12-inch fulcrum; no sourced scale of codes is known for it. */
  readonly moment12: number;
  /** kg cm2 about the butt. */
  readonly inertiaButt: number;
  /** kg cm2 about the grip point. */
  readonly inertiaGrip: number;
  readonly shares: readonly PartShare[];
}

/** Inches from the butt of the point between the hands. Common practice, no source. */
const usualGripPoint = 5;

/**
 * A club from its parts: weights on one axis, rods for shaft, grip and extension, points for the rest, so that
 * every sum is exact (rod and point-mass formulas with the parallel-axis theorem). Inertia leaves out what parts
 * have across the axis and the head's own, a fraction of a percent of a whole club's.
 *
 * `gripPoint`: inches from the butt for `inertiaGrip`.
 */
export function assembleClub(parts: ClubParts, gripPoint: number = usualGripPoint): Outcome<AssembledClub> {
  const problem = checkNumber(gripPoint, { name: "grip point", unit: "inches from the butt" });
  if (problem) return problem;
  const masses = clubMasses(parts);
  if (isProblem(masses)) return masses;
  const sum = (of: (mass: MassOnAxis) => number) => masses.reduce((total, mass) => total + of(mass), 0);
  const weight = sum((mass) => mass.weight);
  const balance = sum((mass) => mass.weight * mass.place) / weight;
  const inertiaButt = sum((mass) => inertiaAbout(mass, 0));
  const momentOf = (mass: MassOnAxis) => balanceMoment(mass.weight, mass.place, swingweightScale.fulcrum);
  const moment14 = sum(momentOf);
  return {
    weight,
    balance,
    moment14,
    swingweight: swingweightCode(moment14),
    moment12: balanceMoment(weight, balance, 12),
    inertiaButt,
    inertiaGrip: sum((mass) => inertiaAbout(mass, gripPoint)),
    shares: masses.map((mass) => ({
      part: mass.part,
      weight: mass.weight,
      place: mass.place,
      moment: momentOf(mass),
      points: momentOf(mass) / swingweightScale.point,
      inertia: inertiaAbout(mass, 0),
    })),
  };
}
