/** A shaft as it comes, before cutting. */
export interface RawShaft {
  /** Grams. */
  readonly weight: number;
  /** Inches. */
  readonly length: number;
  /** Balance point in inches from the butt; half the length when neither this nor `taper` is known. */
  readonly balance?: number;
  /** Instead of a balance point: weight an inch at the tip as a share of that at the butt; 1 is uniform. */
  readonly taper?: number;
}

/** What is cut off a raw shaft: all in inches. Give `butt` or `cutLength`, or both where they agree. */
export interface ShaftTrims {
  /** Off the tip; 0 when left out. */
  readonly tip?: number;
  /** Off the butt. */
  readonly butt?: number;
  /** Length that is left. */
  readonly cutLength?: number;
  /** A parallel tip may be trimmed; a taper tip fits its hosel as it comes. Parallel when left out. */
  readonly tipKind?: "parallel" | "taper";
  /** What the shop entered from the maker's sheet. */
  readonly limits?: {
    /** Most that may come off the tip. */
    readonly tip?: number;
    /** Most that may come off the butt. */
    readonly butt?: number;
    /** Least length that may be left. */
    readonly cutLength?: number;
  };
}
