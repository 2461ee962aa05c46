import type { SetPlan } from "./plan-set.ts";

/** One line of a set's parts list. */
export interface PartsLine {
  readonly part: string;
  readonly count: number;
  /** Grams, all of them together. */
  readonly weight: number;
}

/** What a set takes, part by part with totals; raw shafts as they are bought, the rest as they are put in. */
export function partsList({ clubs }: SetPlan): PartsLine[] {
  const lines = new Map<string, PartsLine>();
  for (const club of clubs) {
    for (const share of club.built.shares) {
      const isShaft = share.part === "shaft";
      const part = isShaft ? "raw shaft" : share.part;
      const { count, weight } = lines.get(part) ?? { count: 0, weight: 0 };
      const more = isShaft ? club.shaftWeight : share.weight;
      lines.set(part, { part, count: count + 1, weight: weight + more });
    }
  }
  return [...lines.values()];
}
