/**
 * The swingweight scale about a fulcrum 14 inches from the butt: letters A to G of ten points each.
 *
 * D0 is 213.5 inch-ounces and a point is 1.75 inch-ounces, that is an eighth of an ounce at 14 inches. The letters
 * and points are common practice, no source; the two figures are an anchor from memory.
 */
export const swingweightScale = {
  /** Inches from the butt to the fulcrum. */
  fulcrum: 14,
  /** Inch-ounces at A0.0, thirty points below D0. */
  lowest: 161,
  /** Inch-ounces a point. */
  point: 1.75,
  /** The letters in order; each holds ten points. */
  letters: "ABCDEFG",
} as const;
