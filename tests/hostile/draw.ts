import { seededRandom } from "../../src/stats/seeded-random.ts";

/** What a grammar draws its choices from; one seed gives the same table again, so that a failure can be looked at. */
export interface Draw {
  /** A whole number from 0 up to, not with, the limit. */
  below(limit: number): number;
  /** True once in so many times. */
  once(inTimes: number): boolean;
  one<T>(list: readonly T[]): T;
}

export function drawFrom(seed: number): Draw {
  const random = seededRandom(seed);
  const below = (limit: number) => Math.floor(random.uniform() * limit);
  return { below, once: (inTimes) => below(inTimes) === 0, one: (list) => list[below(list.length)]! };
}
