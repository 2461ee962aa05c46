import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { assembleClub } from "./assemble-club.ts";
import type { ClubParts } from "./club-parts.ts";
import { swingweightScale } from "./swingweight-scale.ts";

/**
 * Swingweight points by which each club moves when its shaft is the one that sorting gave it instead of the one it
 * was planned with, all else equal. `weights`: raw grams, one a club.
 */
export function swingweightDrift(clubs: readonly ClubParts[], weights: readonly number[]): Outcome<number[]> {
  if (clubs.length !== weights.length) {
    return invalid(
      `weights has ${weights.length} shafts for ${clubs.length} clubs; it should have one a club.`,
    );
  }
  const drifts: number[] = [];
  for (const [index, parts] of clubs.entries()) {
    const planned = assembleClub(parts);
    if (isProblem(planned)) return planned;
    const sorted = assembleClub({ ...parts, shaft: { ...parts.shaft, weight: weights[index]! } });
    if (isProblem(sorted)) return sorted;
    drifts.push((sorted.moment14 - planned.moment14) / swingweightScale.point);
  }
  return drifts;
}
