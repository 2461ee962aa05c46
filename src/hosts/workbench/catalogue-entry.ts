import type { Problem } from "../../outcome/problem.ts";

/** A custom function as the open grid calls it. `src/functions/catalogue.ts` lists them all. */
export interface CatalogueEntry {
  /** Name without the namespace: `SWINGWEIGHT.MOMENT`. */
  readonly id: string;
  /**
   * Raw cells in: a scalar, or rows of scalars for a range; null is a blank cell, undefined an argument left out.
   * One answer out, or rows of answers.
   */
  readonly run: (...cells: unknown[]) => Answer | readonly (readonly Answer[])[];
  /** How many arguments it takes. */
  readonly least: number;
  readonly most: number;
}

export type Answer = string | number | boolean | Problem;

/** Every function of ours begins with this in a workbook. */
export const NAMESPACE = "CLUB";
