import type { Covariance } from "./covariance-of.ts";

/** An ellipse in the plane of two measurements, both in the same unit. */
export interface Ellipse {
  readonly centreX: number;
  readonly centreY: number;
  /** Half axes, the long one first. */
  readonly longHalf: number;
  readonly shortHalf: number;
  /** Degrees from the x axis to the long axis, positive towards positive y, over -90 up to 90; 0 for a circle. */
  readonly angle: number;
  readonly area: number;
}

/**
 * The ellipse of all points whose squared Mahalanobis distance from the centre is `scale`: half axes are the square
 * roots of the covariance's eigenvalues times `scale`.
 */
export function ellipseAround(spread: Covariance, scale: number): Ellipse {
  const { varianceX, varianceY, covariance } = spread;
  const half = Math.hypot((varianceX - varianceY) / 2, covariance);
  const long = (varianceX + varianceY) / 2 + half;
  // The short eigenvalue as the determinant over the long one: the difference would lose its digits when flat.
  const short = long > 0 ? Math.max(0, (varianceX * varianceY - covariance * covariance) / long) : 0;
  const longHalf = Math.sqrt(long * scale);
  const shortHalf = Math.sqrt(short * scale);
  return {
    centreX: spread.meanX,
    centreY: spread.meanY,
    longHalf,
    shortHalf,
    angle: (Math.atan2(2 * covariance, varianceX - varianceY) * 90) / Math.PI,
    area: Math.PI * longHalf * shortHalf,
  };
}
