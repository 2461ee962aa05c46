/**
 * A source of drag and lift coefficients. Written to be called in the innermost loop: it fills `out` and allocates
 * nothing.
 */
export interface CoefficientModel {
  readonly name: string;
  /** The publication the figures come from. */
  readonly source: string;
  /**
   * Fills out[0] with the drag and out[1] with the lift coefficient.
   *
   * @param speed through the air, m/s, above 0
   * @param spin rpm, 0 or more
   * @param reynolds diameter x speed over kinematic viscosity
   */
  coefficients(speed: number, spin: number, reynolds: number, out: Float64Array): void;
  /** Whether the figures at this point were measured rather than extended. */
  measured(speed: number, spin: number, reynolds: number): boolean;
}
