/**
 * How a ball leaves the club. SI but for the angles, which are in degrees, and the spin, which is in rpm. Right of the
 * target and up are positive, for left-handed players too.
 */
export interface Strike {
  /** m/s */
  readonly speed: number;
  /** Launch angle above the horizontal. */
  readonly launch: number;
  /** rpm, 0 or more; which way it turns is the axis' matter. */
  readonly spin: number;
  /** Tilt of the spin axis; positive curves the ball to the right. 0 when left out. */
  readonly axis?: number;
  /** Launch direction; positive starts to the right. 0 when left out. */
  readonly direction?: number;
}
