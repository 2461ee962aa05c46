/** A rod on the shaft's axis whose weight an inch runs straight from one end to the other. */
export interface TaperedRod {
  /** Inches from the butt. */
  readonly start: number;
  readonly end: number;
  /** Grams an inch at either end. */
  readonly startDensity: number;
  readonly endDensity: number;
}

/**
 * The rod of a weight from `start` to `end` that balances `balance` inches from its start. This is the model of a
 * shaft whose weight, length and balance point were measured, and nothing more.
 *
 * A balance point in the middle third fixes a straight-line density over the whole length. Nearer an end than a
 * third no straight line can do it without going below nothing: the rod is then the triangle at that end, as long as
 * three times the distance. Both agree at the third. The balance point must lie within the length, which callers
 * have checked.
 */
export function taperedRod(weight: number, start: number, end: number, balance: number): TaperedRod {
  const length = end - start;
  const share = balance / length;
  if (share < 1 / 3) {
    return { start, end: start + 3 * balance, startDensity: (2 * weight) / (3 * balance), endDensity: 0 };
  }
  if (share > 2 / 3) {
    const reach = 3 * (length - balance);
    return { start: end - reach, end, startDensity: 0, endDensity: (2 * weight) / reach };
  }
  const mean = weight / length;
  const slope = 6 * share - 3;
  return { start, end, startDensity: mean * (1 - slope), endDensity: mean * (1 + slope) };
}
