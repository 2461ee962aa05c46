import { mean, sampleStandardDeviation } from "simple-statistics";
import type { SeededRandom } from "../../src/stats/seeded-random.ts";

/** A fitting whose truth is known: builds with true means, and shots drawn about them. */
export interface SimulatedSession {
  readonly truth: readonly number[];
  readonly sd: number;
  readonly shots: number[][];
}

/**
 * How true means of builds come about, counted in spreads of single shots: builds that are all the same; true means
 * about a common one with a half-t spread (scale 0.8, four degrees of freedom), which is what the product supposes;
 * even steps of a quarter, a half or a whole spread; and one build ahead of equals by a whole spread.
 */
export type Truth = "same" | "supposed" | "quarter steps" | "half steps" | "whole steps" | "one ahead";

/** Spread of carry within a build, yards: from a steady to a wayward player (common practice, no source). */
const STEADY = 3;
const WAYWARD = 10;

/** Draws a session: 2 to 6 builds, 3 to 10 shots each, a spread as players have, and true means as asked. */
export function simulatedSession(random: SeededRandom, truth: Truth): SimulatedSession {
  const builds = 2 + Math.floor(random.uniform() * 5);
  const each = 3 + Math.floor(random.uniform() * 8);
  const sd = STEADY + random.uniform() * (WAYWARD - STEADY);
  const means = trueMeans(random, truth, builds).map((offset) => 160 + sd * offset);
  return { truth: means, sd, shots: means.map((centre) => shotsAbout(random, centre, sd, each)) };
}

function trueMeans(random: SeededRandom, truth: Truth, builds: number): number[] {
  const places = shuffled(
    random,
    Array.from({ length: builds }, (_, i) => i),
  );
  if (truth === "same") return places.map(() => 0);
  if (truth === "one ahead") return places.map((place) => (place === 0 ? 1 : 0));
  if (truth === "supposed") {
    const scale = 0.8 * Math.abs(random.normal() / Math.sqrt(chiSquare(random, 4) / 4));
    return places.map(() => scale * random.normal());
  }
  const step = { "quarter steps": 0.25, "half steps": 0.5, "whole steps": 1 }[truth];
  return places.map((place) => step * place);
}

function chiSquare(random: SeededRandom, df: number): number {
  let sum = 0;
  for (let i = 0; i < df; i++) sum += random.normal() ** 2;
  return sum;
}

function shuffled(random: SeededRandom, list: number[]): number[] {
  for (let i = list.length - 1; i > 0; i--) {
    const j = Math.floor(random.uniform() * (i + 1));
    [list[i], list[j]] = [list[j]!, list[i]!];
  }
  return list;
}

export function shotsAbout(random: SeededRandom, centre: number, sd: number, count: number): number[] {
  return Array.from({ length: count }, () => centre + sd * random.normal());
}

/** Count, mean and spread of each build's shots. */
export function groupsOf(shots: readonly (readonly number[])[]) {
  return shots.map((list) => ({
    n: list.length,
    mean: mean([...list]),
    sd: list.length > 1 ? sampleStandardDeviation([...list]) : null,
  }));
}
