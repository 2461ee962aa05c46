import type { RawShaft, ShaftTrims } from "./raw-shaft.ts";

/** A weight somewhere on the club: grams, and inches from the club's butt. */
export interface PlacedWeight {
  readonly weight: number;
  /** Left out: where such a part usually sits, as `ClubParts` says beside each. */
  readonly place?: number;
}

/**
 * A club as the bench puts it together. Grams and inches; every place is measured along the shaft's axis from the
 * club's butt. The thickness of the grip's cap is left out, and so is what parts weigh away from the axis.
 */
export interface ClubParts {
  /** Length of the club. */
  readonly length: number;
  /** `place`: its centre of gravity seen on the shaft's axis; at the club's end when left out. */
  readonly head: PlacedWeight;
  readonly shaft: RawShaft;
  readonly trims?: ShaftTrims;
  /** `length`: 27 cm when left out; `balance`: from the butt, half its length when left out. */
  readonly grip: { readonly weight: number; readonly length?: number; readonly balance?: number };
  /** 1.5 inches above the shaft's tip when left out: an assumption, enter the measured place where it matters. */
  readonly ferrule?: PlacedWeight;
  /** Half an inch above the shaft's tip when left out: an assumption. */
  readonly epoxy?: PlacedWeight;
  /** In the shaft's tip when left out. */
  readonly tipWeight?: PlacedWeight;
  /** At the butt when left out. */
  readonly buttWeight?: PlacedWeight;
  /** Strips of lead tape; each with its place. */
  readonly tape?: readonly { readonly weight: number; readonly place: number }[];
  /** A plug that lengthens the shaft at its butt: `length` shows, `insert` sits inside the shaft (0 if left out). */
  readonly extension?: { readonly weight: number; readonly length: number; readonly insert?: number };
}

/** Length of a grip in inches where it was not measured: 27 cm. Common practice, no source. */
export const usualGripLength = 27 / 2.54;
