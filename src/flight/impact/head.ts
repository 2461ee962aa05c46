import { BALL } from "../ball/ball.ts";

/** What a head brings to the ball. */
export interface Head {
  /** Mass that acts at the point of impact, kg; about that of the head for a strike in the middle. */
  readonly effectiveMass: number;
  /** Coefficient of restitution of head and ball, 0 to 1. */
  readonly restitution: number;
}

/** A mid iron: 270 g; the restitution is common practice, no source. */
export const IRON_HEAD: Head = { effectiveMass: 0.27, restitution: 0.76 };

/**
 * Ball speed over head speed, along where the face looks, per unit of the head speed in that direction: Newton's law of
 * restitution for two free bodies.
 */
export function normalGain({ effectiveMass, restitution }: Head): number {
  return (1 + restitution) / (1 + BALL.mass / effectiveMass);
}

/**
 * The same along the face, for a uniform ball that rolls when it leaves: 2/7 / (1 + 2/7 m/M), from the rigid-body
 * balance of momentum and spin. A ball that is still sliding gets less.
 */
export function tangentialGain({ effectiveMass }: Head): number {
  return 2 / 7 / (1 + ((2 / 7) * BALL.mass) / effectiveMass);
}
