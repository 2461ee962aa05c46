import type { Problem } from "../../outcome/problem.ts";
import { within } from "../within.ts";
import type { Delivery } from "./delivery.ts";

/** Refuses angles that no delivery has. */
export function checkDelivery({ dynamicLoft, attack, face = 0, path = 0 }: Delivery): Problem | undefined {
  return (
    within("dynamic loft", dynamicLoft, -20, 90, "degrees") ??
    within("attack", attack, -45, 45, "degrees") ??
    within("face", face, -60, 60, "degrees") ??
    within("path", path, -60, 60, "degrees")
  );
}
