/** Where the figures stand in the array a model reads and fills. */
export const POINT = { speed: 0, spin: 1, reynolds: 2, drag: 3, lift: 4 } as const;

/**
 * A source of drag and lift coefficients, asked in the innermost loop. Figures go in and out through one array, since
 * numbers handed to a function that is not inlined are put on the heap one by one.
 */
export interface CoefficientModel {
  readonly name: string;
  /** The publication the figures come from. */
  readonly source: string;
  /**
   * Reads speed through the air (m/s, above 0), spin (rpm, 0 or more) and Reynolds number (by diameter) from `point`,
   * and writes the drag and lift coefficients to it.
   */
  coefficients(point: Float64Array): void;
  /** Whether the figures at this speed, spin and Reynolds number were measured rather than extended. */
  measured(speed: number, spin: number, reynolds: number): boolean;
}
