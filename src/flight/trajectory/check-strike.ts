import type { Problem } from "../../outcome/problem.ts";
import type { Air } from "../air/air.ts";
import { within } from "../within.ts";
import type { Strike } from "./strike.ts";

/** What a flight can be computed for: wider than golf, so that only slips of the pen are refused. */
export function checkStrike(strike: Strike, air: Air): Problem | undefined {
  return (
    within("ball speed", strike.speed, 1, 120, "m/s") ??
    within("launch angle", strike.launch, -30, 89, "degrees") ??
    within("spin", strike.spin, 0, 20_000, "rpm") ??
    within("spin axis", strike.axis ?? 0, -90, 90, "degrees") ??
    within("direction", strike.direction ?? 0, -90, 90, "degrees") ??
    within("air density", air.density, 0, 2, "kg/m3") ??
    within("air viscosity", air.viscosity, 1e-6, 1e-4, "Pa s")
  );
}
