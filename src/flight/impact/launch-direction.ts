import type { Outcome } from "../../outcome/problem.ts";
import { within } from "../within.ts";
import { checkDelivery } from "./check-delivery.ts";
import { type Delivery, directionOf, dot, RADIANS } from "./delivery.ts";
import { type Head, IRON_HEAD, normalGain, tangentialGain } from "./head.ts";

/** How the ball leaves, in degrees: up and right of the target are positive. */
export interface Launch {
  /** Above the horizontal, degrees. */
  readonly launch: number;
  /** Right of the target is positive, degrees. */
  readonly direction: number;
}

/**
 * Where the ball starts: between where the face looks and where the head moves, nearer the face, since the face drives
 * the ball along its normal by `normalGain` and drags it along itself by only `tangentialGain`. A head of 200 to 300 g
 * puts it 75 to 85 % of the way to the face.
 */
export function launchDirection(delivery: Delivery, head: Head = IRON_HEAD): Outcome<Launch> {
  const problem =
    checkDelivery(delivery) ??
    within("effective mass", head.effectiveMass, 0.02, 1, "kg") ??
    within("restitution", head.restitution, 0, 1);
  if (problem) return problem;
  const moves = directionOf(delivery.attack, delivery.path ?? 0);
  const looks = directionOf(delivery.dynamicLoft, delivery.face ?? 0);
  const into = dot(moves, looks);
  const along = tangentialGain(head);
  const extra = (normalGain(head) - along) * into;
  const x = along * moves[0] + extra * looks[0];
  const y = along * moves[1] + extra * looks[1];
  const z = along * moves[2] + extra * looks[2];
  return {
    launch: Math.atan2(y, Math.sqrt(x * x + z * z)) / RADIANS,
    direction: Math.atan2(z, x) / RADIANS,
  };
}
