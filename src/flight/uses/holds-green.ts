import type { Outcome } from "../../outcome/problem.ts";
import { within } from "../within.ts";

export interface Holding {
  readonly verdict: "holds" | "may hold" | "runs on";
  /** One sentence for the player. */
  readonly words: string;
}

/** The trade's usual figures for an iron into a green: common practice, no source. Degrees, and rpm at the start. */
const GREEN = { angle: 45, leastAngle: 40, spin: 4500 } as const;

/**
 * Whether an iron shot stops on a green, by the trade's rule of thumb (common practice, no source): it holds when it
 * comes down at 45 degrees or more with 4,500 rpm or more, it may hold when it meets one of the two and comes down at
 * 40 degrees or more, and runs on otherwise. The green itself, and the wind, are not in here.
 */
export function holdsGreen(landingAngle: number, spin: number): Outcome<Holding> {
  const problem =
    within("landing angle", landingAngle, 0, 90, "degrees") ?? within("spin", spin, 0, 20_000, "rpm");
  if (problem) return problem;
  const steep = landingAngle >= GREEN.angle;
  const spins = spin >= GREEN.spin;
  const figures = `${shown(landingAngle, GREEN.angle, 1)} degrees and ${shown(spin, GREEN.spin, 0)} rpm`;
  if (steep && spins)
    return { verdict: "holds", words: `Comes down at ${figures}: steep and spinning enough to stop.` };
  if ((steep || spins) && landingAngle >= GREEN.leastAngle) {
    const lacks = steep ? "spin" : "height";
    return {
      verdict: "may hold",
      words: `Comes down at ${figures}: a little short of ${lacks} for a firm green.`,
    };
  }
  return {
    verdict: "runs on",
    words: `Comes down at ${figures}: expect it to run on; aim short or find height.`,
  };
}

/** Rounded, but what falls short of a limit is never shown as the limit itself. */
function shown(value: number, limit: number, decimals: number): string {
  const rounded = value.toFixed(decimals);
  return value < limit && Number(rounded) >= limit ? (limit - 10 ** -decimals).toFixed(decimals) : rounded;
}
