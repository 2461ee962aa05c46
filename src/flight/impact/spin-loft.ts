import type { Outcome } from "../../outcome/problem.ts";
import { checkDelivery } from "./check-delivery.ts";
import { cross, type Delivery, directionOf, dot, RADIANS } from "./delivery.ts";

/**
 * Spin loft in degrees: the angle between where the face looks and where the head moves. Exact vector geometry; without
 * face and path it is dynamic loft less attack. Never negative.
 * Closed form: cos = cos(loft) cos(attack) cos(face - path) + sin(loft) sin(attack); taken from sine and cosine
 * together here, since the cosine alone is blind near 0.
 *
 * @example spinLoft({ dynamicLoft: 30, attack: -4, face: -2, path: 1 }) // 34.1211
 */
export function spinLoft(delivery: Delivery): Outcome<number> {
  return checkDelivery(delivery) ?? angleBetween(delivery) / RADIANS;
}

function angleBetween({ dynamicLoft, attack, face = 0, path = 0 }: Delivery): number {
  const moves = directionOf(attack, path);
  const looks = directionOf(dynamicLoft, face);
  const across = cross(moves, looks);
  return Math.atan2(Math.sqrt(dot(across, across)), dot(moves, looks));
}
