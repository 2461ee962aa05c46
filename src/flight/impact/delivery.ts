/** How the head meets the ball, in degrees. Up and right of the target are positive. */
export interface Delivery {
  /** Loft the face shows at impact. */
  readonly dynamicLoft: number;
  /** Up is positive. */
  readonly attack: number;
  /** 0 when left out. */
  readonly face?: number;
  /** 0 when left out. */
  readonly path?: number;
}

/** Radians in a degree. */
export const RADIANS = Math.PI / 180;

/** A direction: x to the target, y up, z to the right. */
export type Direction = readonly [x: number, y: number, z: number];

/** The unit vector at an elevation and a heading, both in degrees. */
export function directionOf(elevation: number, heading: number): Direction {
  const up = elevation * RADIANS;
  const right = heading * RADIANS;
  return [Math.cos(up) * Math.cos(right), Math.sin(up), Math.cos(up) * Math.sin(right)];
}

/** The product of two directions: the cosine of the angle between them. */
export function dot(a: Direction, b: Direction): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** The direction square to both, as long as the sine of the angle between them. */
export function cross(a: Direction, b: Direction): Direction {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}
