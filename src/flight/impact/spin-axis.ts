import { type Outcome, unavailable } from "../../outcome/problem.ts";
import { checkDelivery } from "./check-delivery.ts";
import { cross, type Delivery, directionOf, dot, RADIANS } from "./delivery.ts";

/**
 * Tilt of the spin axis in degrees, positive to the right, from a strike in the middle of the face. The axis stands
 * square to the plane that holds where the face looks and where the head moves. Exact vector geometry; closed form:
 * sin = cos(attack) cos(loft) sin(face - path) / sin(spin loft). A strike off the middle of a driver tilts it further
 * (gear effect), which is not in here.
 *
 * `unavailable` when the face looks where the head moves: then nothing spins the ball.
 *
 * @example spinAxis({ dynamicLoft: 12, attack: 3, face: 2, path: -2 }) // 23.5145
 */
export function spinAxis(delivery: Delivery): Outcome<number> {
  const problem = checkDelivery(delivery);
  if (problem) return problem;
  const { dynamicLoft, attack, face = 0, path = 0 } = delivery;
  const axis = cross(directionOf(attack, path), directionOf(dynamicLoft, face));
  const length = Math.sqrt(dot(axis, axis));
  if (length < 1e-12) return unavailable("spin loft is 0, so that the ball does not spin and has no axis");
  const tilt = Math.asin(Math.min(1, Math.max(-1, -axis[1] / length)));
  return tilt / RADIANS + 0;
}
