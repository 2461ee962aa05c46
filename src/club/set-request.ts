import type { ShaftTrims } from "./raw-shaft.ts";

/** One club of a set, as the shop wants it. Inches, grams, degrees; what is left out is not planned. */
export interface SetClub {
  /** Its label: "7", "PW". */
  readonly club: string;
  readonly length: number;
  readonly loft?: number;
  readonly lie?: number;
  /** Target code of this club alone, before the set's own target. */
  readonly swingweight?: string;
  /** Weight of the head on hand. */
  readonly head?: number;
  /** Loft, lie and bounce of the head on hand, as measured. */
  readonly headLoft?: number;
  readonly headLie?: number;
  readonly bounce?: number;
  /** Target weight of this club's shaft alone, before the set's steps. */
  readonly shaft?: number;
  /** Length of its raw shaft; left out, one just long enough: the length in the club and the tip trim. */
  readonly rawLength?: number;
  /** What comes off its tip, before the set's schedule. */
  readonly tipTrim?: number;
  /** Inches from the shaft's tip to the club's end, where the bore stops short of the ground; 0 when left out. */
  readonly bore?: number;
  /**
   * Cycles a minute that the finished club should show, as the shop's own chart for its clamp and tip weight has it:
   * frequencies of two analysers compare only where both are alike, and nothing here computes one.
   */
  readonly frequency?: number;
  /** Carry expected of it, in whatever unit the gaps are wanted in. */
  readonly carry?: number;
  /** A putter: the Rules' greatest length does not hold. */
  readonly putter?: boolean;
}

/** What all clubs of a set are built to. */
export type SetTarget =
  /** One code, or from a reference club a step in points a club shorter. */
  | {
      readonly kind: "swingweight";
      readonly code: string;
      readonly reference?: string;
      readonly step?: number;
    }
  /** One moment of inertia about the butt, in kg cm2. */
  | { readonly kind: "inertia"; readonly inertia: number }
  /** The moment of inertia that one club has when built to a code. */
  | { readonly kind: "inertia of"; readonly reference: string; readonly code: string };

/** Weights of the shafts: one at a reference club with a step a club shorter (0: constant), or a list. */
export type SetShafts =
  | { readonly kind: "steps"; readonly weight: number; readonly reference?: string; readonly step?: number }
  | { readonly kind: "list"; readonly weights: readonly number[] };

/** How far off a measured club may be before it is adjusted: what a Build sheet marks by. */
export interface SetTolerances {
  /** Inches. */
  readonly length?: number;
  /** Degrees. */
  readonly loft?: number;
  readonly lie?: number;
  /** Points. */
  readonly swingweight?: number;
  /** Grams. */
  readonly head?: number;
  readonly shaft?: number;
  readonly total?: number;
  /** Cycles a minute. */
  readonly frequency?: number;
}

/** A whole set to plan, the longest club first. */
export interface SetRequest {
  /** What the set is called on paper. */
  readonly name?: string;
  readonly clubs: readonly SetClub[];
  readonly target: SetTarget;
  readonly shafts: SetShafts;
  /** The schedule of tip trims: inches off at a reference club (the first if left out), a step a club shorter. */
  readonly tipTrims?: { readonly tip: number; readonly step?: number; readonly reference?: string };
  /** What the raw shafts have in common. */
  readonly shaftBlank?: {
    /** Balance point as a share of the raw length, from the butt; a half when left out. */
    readonly balanceShare?: number;
    readonly tipKind?: "parallel" | "taper";
    readonly limits?: ShaftTrims["limits"];
  };
  readonly grip: { readonly weight: number; readonly length?: number; readonly balance?: number };
  /** Grams a club. */
  readonly ferrule?: number;
  readonly epoxy?: number;
  /** Most degrees of bending, in loft or lie, that the heads' maker allows, as entered by the shop. */
  readonly bendLimit?: number;
  /**
   * Lead tape that makes up for a head on hand that is too light: how far above the club's end it sits, in inches,
   * and the most grams of it.
   */
  readonly tape?: { readonly up: number; readonly most: number };
  readonly tolerances?: SetTolerances;
  /** Measured raw weights of the shafts at hand, to sort. */
  readonly bin?: readonly number[];
}
