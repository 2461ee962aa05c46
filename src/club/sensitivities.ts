import { isProblem, type Outcome } from "../outcome/problem.ts";
import { type AssembledClub, assembleClub } from "./assemble-club.ts";
import type { ClubParts } from "./club-parts.ts";
import { swingweightScale } from "./swingweight-scale.ts";
import { withLength } from "./with-length.ts";

/** What one of the bench's usual changes does to a club. */
export interface Sensitivity {
  readonly part: "length" | "head" | "grip" | "shaft";
  /** How much more of it: 0.5 inches, or grams. */
  readonly change: number;
  readonly unit: "in" | "g";
  /** Swingweight points. */
  readonly points: number;
  /** kg cm2 about the butt. */
  readonly inertia: number;
}

/**
 * What half an inch of length, 2 g of head, 5 g of grip and 9 g of shaft do to this very club, from its own model.
 * The rule of thumb says 3 points, 1, -1 and 1 (common practice, no source).
 *
 * Half an inch is what cutting it off the butt takes away, with the sign turned. The 9 g are grams of the shaft as
 * cut, its taper unchanged.
 */
export function sensitivities(parts: ClubParts): Outcome<Sensitivity[]> {
  const club = assembleClub(parts);
  if (isProblem(club)) return club;
  const shorter = assembleClub(withLength(parts, parts.length - 0.5));
  if (isProblem(shorter)) return shorter;
  const { head, grip, shaft } = parts;
  const cutWeight = club.shares.find((share) => share.part === "shaft")!.weight;
  const heavierHead = assembleClub({ ...parts, head: { ...head, weight: head.weight + 2 } });
  if (isProblem(heavierHead)) return heavierHead;
  const heavierGrip = assembleClub({ ...parts, grip: { ...grip, weight: grip.weight + 5 } });
  if (isProblem(heavierGrip)) return heavierGrip;
  const raw = shaft.weight * (1 + 9 / cutWeight);
  const heavierShaft = assembleClub({ ...parts, shaft: { ...shaft, weight: raw } });
  if (isProblem(heavierShaft)) return heavierShaft;
  const change = (more: AssembledClub, less: AssembledClub) => ({
    points: (more.moment14 - less.moment14) / swingweightScale.point,
    inertia: more.inertiaButt - less.inertiaButt,
  });
  return [
    { part: "length", change: 0.5, unit: "in", ...change(club, shorter) },
    { part: "head", change: 2, unit: "g", ...change(heavierHead, club) },
    { part: "grip", change: 5, unit: "g", ...change(heavierGrip, club) },
    { part: "shaft", change: 9, unit: "g", ...change(heavierShaft, club) },
  ];
}
