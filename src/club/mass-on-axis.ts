/** A part of a club as the bench's model sees it: a weight spread along the shaft's axis. */
export interface MassOnAxis {
  /** What it is, for people: "head", "shaft". */
  readonly part: string;
  /** Grams. */
  readonly weight: number;
  /** Centre of gravity in inches from the butt. */
  readonly place: number;
  /** Inertia about its own centre of gravity, in gram inches squared; 0 for a weight at one place. */
  readonly spread: number;
}

/** A weight at one place of the axis. */
export function pointMass(part: string, weight: number, place: number): MassOnAxis {
  return { part, weight, place, spread: 0 };
}
