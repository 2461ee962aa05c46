import { sortShafts } from "../../src/club/sort-shafts.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { milliseconds, shown } from "./beside.ts";
import type { BenchLine } from "./run.ts";

/** A big bin dealt out to a year's sets, by weight alone and by weight and frequency. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const weights = Array.from({ length: 500 }, (_, index) => 95 + ((index * 7919) % 500) / 25);
  const measured = weights.map((_, index) => 290 + ((index * 104729) % 400) / 10);
  const targets = Array.from({ length: 320 }, (_, index) => 98 + (index % 8) * 2);
  const wanted = targets.map((_, index) => 295 + (index % 8) * 4);
  const ways = {
    weight: () => sortShafts(weights, targets),
    "weight and frequency": () =>
      sortShafts(weights, targets, { frequencies: { measured, targets: wanted } }),
  };
  for (const [way, sort] of Object.entries(ways)) {
    let sorted = sort();
    const ms = milliseconds(() => {
      sorted = sort();
    });
    if (isProblem(sorted)) throw new Error(sorted.message);
    yield { what: `500 shafts to 40 sets of 8 by ${way}`, ms: shown(ms), goal: 1000, met: ms <= 1000 };
  }
}
