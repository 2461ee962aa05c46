import { isProblem } from "../outcome/problem.ts";
import { dunnett } from "./dunnett.ts";
import { holm } from "./holm.ts";
import { welch } from "./welch.ts";

/** A difference from the baseline with limits that hold together with those of the other groups. */
export interface BaselineLimits {
  readonly difference: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly p: number | null;
}

/**
 * Dunnett's limits for every group with two values or more, null for the baseline and the others. A single value is
 * left out although a pooled spread would give it limits: they would rest on other groups alone.
 */
export function dunnettLimits(
  groups: readonly number[][],
  baseline: number,
  confidence: number,
): (BaselineLimits | null)[] {
  const places = comparable(groups, baseline);
  const found = dunnett(
    [baseline, ...places].map((place) => groups[place]!),
    0,
    confidence,
  );
  if (isProblem(found)) return groups.map(() => null);
  return groups.map((_, place) => {
    // A place that takes no part is found at 0, where the baseline stands with null.
    const row = found.differences[places.indexOf(place) + 1];
    return row ? { difference: row.difference, low: row.low, high: row.high, p: row.p } : null;
  });
}

/** Welch's limits at Bonferroni's level with Holm's probabilities, for the same groups. */
export function holmWelchLimits(
  groups: readonly number[][],
  baseline: number,
  confidence: number,
): (BaselineLimits | null)[] {
  const places = comparable(groups, baseline);
  const level = 1 - (1 - confidence) / places.length;
  const found = places
    .map((place) => ({ place, limits: welch(groups[place]!, groups[baseline]!, level) }))
    .flatMap(({ place, limits }) => (isProblem(limits) ? [] : [{ place, limits }]));
  const adjusted = holm(found.map(({ limits }) => limits.p));
  return groups.map((_, place) => {
    const rank = found.findIndex((row) => row.place === place);
    if (rank < 0 || isProblem(adjusted)) return null;
    const { difference, low, high } = found[rank]!.limits;
    return { difference, low, high, p: adjusted[rank]! };
  });
}

function comparable(groups: readonly number[][], baseline: number): number[] {
  if (groups[baseline]!.length < 2) return [];
  return groups.flatMap((group, i) => (i !== baseline && group.length > 1 ? [i] : []));
}
