import type { UnitSet } from "../shots/unit-set.ts";
import type { GroupSummary } from "../stats/index.ts";
import { shownFigure } from "./plain-sentences.ts";

/** Of fewer shots than these no half can be told apart (common sense, no source). */
const FEWEST_FOR_HALF = 5;

/** What a sentence on two groups needs: how it begins, and the two distances as they are shown. */
export interface GroupDistances {
  readonly of: "half" | "average";
  readonly mine: string;
  readonly theirs: string;
  /** Whether mine is the longer one. */
  readonly wider: boolean;
}

/**
 * How near to the middle of their groups the shots of two builds came down: half of them within a distance, or all of
 * them on average where either has too few shots for a half. Null where a group has one shot or none.
 */
export function groupDistances(
  mine: GroupSummary | null,
  theirs: GroupSummary | null,
  units: UnitSet,
): GroupDistances | null {
  if (!mine || !theirs) return null;
  const of = Math.min(mine.n, theirs.n) < FEWEST_FOR_HALF ? "average" : "half";
  const distances = [mine, theirs].map((group) => (of === "half" ? group.halfRadius : group.meanRadius));
  if (distances.some((distance) => distance === null)) return null;
  const [own, others] = distances.map((distance) => shownFigure(distance!, "offline", units));
  return { of, mine: own!, theirs: others!, wider: distances[0]! > distances[1]! };
}
