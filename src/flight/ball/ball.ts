/**
 * The ball as the rules bound it: no heavier than 1.620 oz, no smaller than 1.680 in. Source: Equipment Rules of
 * The R&A and USGA, part 4, sections 2 and 3; kilograms and metres rounded as flight studies round them.
 */
export const BALL = { mass: 0.04593, diameter: 0.04267, radius: 0.04267 / 2 } as const;

/** Half the air density times area over mass, per kg/m3: drag in m/s2 is this x density x CD x speed squared. */
export const AREA_OVER_TWO_MASSES = (Math.PI * BALL.radius ** 2) / (2 * BALL.mass);

/** A turn is 2 pi radians, a minute 60 seconds. */
export const RADIANS_A_SECOND_PER_RPM = Math.PI / 30;

/** Standard gravity, m/s2 (CGPM 1901). */
export const GRAVITY = 9.80665;

/** Speed of the ball's equator over its speed through the air, the S of wind-tunnel papers. Speed m/s, spin rpm. */
export function spinRatio(speed: number, spin: number): number {
  return (spin * RADIANS_A_SECOND_PER_RPM * BALL.radius) / speed;
}
