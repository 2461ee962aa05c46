import fc from "fast-check";
import { expect, test } from "vitest";
import * as stats from "../../src/stats/index.ts";

// The house rule: whatever comes in, an answer holds finite numbers only, or it is a problem with a sentence.
const odd = fc.oneof(
  fc.double({ noNaN: false }),
  fc.integer({ min: -5, max: 5 }),
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, 1e308, -1e308, 5e-324, 0, 250),
);
const mixed = fc.oneof({ weight: 5, arbitrary: fc.double({ min: -300, max: 300, noNaN: true }) }, odd);
const column = fc.oneof(fc.array(odd, { maxLength: 7 }), fc.array(mixed, { minLength: 5, maxLength: 7 }));
const table = fc.array(column, { maxLength: 5 });
const level = fc.oneof(
  fc.constantFrom(0.95, 0.5, 0, 1, 95, Number.NaN),
  fc.double({ min: 0.01, max: 0.999 }),
);
const place = fc.integer({ min: -1, max: 3 });
const goal = fc.oneof(fc.constantFrom("high" as const, "low" as const), odd);
const spread = fc.constantFrom("pooled" as const, "separate" as const);
const groupMean = fc.record({
  n: fc.oneof({ weight: 9, arbitrary: fc.integer({ min: 1, max: 40 }) }, odd),
  mean: fc.oneof({ weight: 9, arbitrary: fc.double({ min: 200, max: 300, noNaN: true }) }, odd),
  sd: fc.oneof({ weight: 9, arbitrary: fc.double({ min: 0, max: 20, noNaN: true }) }, odd, fc.constant(null)),
});

const calls: [string, fc.Arbitrary<unknown>][] = [
  ["summary", fc.tuple(column, level).map((a) => stats.summary(...a))],
  ["welch", fc.tuple(column, column, level).map((a) => stats.welch(...a))],
  ["hedgesG", fc.tuple(column, column).map((a) => stats.hedgesG(...a))],
  ["permutationP", fc.tuple(column, column).map((a) => stats.permutationP(...a))],
  ["hodgesLehmann", fc.tuple(column, column).map((a) => stats.hodgesLehmann(...a))],
  ["hodgesLehmannCentre", column.map((a) => stats.hodgesLehmannCentre(a))],
  ["anova", table.map((a) => stats.anova(a))],
  ["welchAnova", table.map((a) => stats.welchAnova(a))],
  ["brownForsythe", table.map((a) => stats.brownForsythe(a))],
  ["spreadTest", table.map((a) => stats.spreadTest(a))],
  ["holm", column.map((a) => stats.holm(a))],
  ["dunnett", fc.tuple(table, place, level).map((a) => stats.dunnett(...a))],
  ["compareWithBaseline", fc.tuple(table, place, level).map((a) => stats.compareWithBaseline(...a))],
  [
    "chanceBest",
    fc.tuple(fc.array(groupMean, { maxLength: 4 }), goal, spread).map((a) => stats.chanceBest(...a)),
  ],
  ["shotsNeeded", fc.tuple(odd, odd, level, level).map((a) => stats.shotsNeeded(...a))],
  [
    "bechhoferShots",
    fc
      .tuple(
        fc.oneof(odd, fc.constant(8)),
        fc.oneof(odd, fc.constant(5)),
        fc.integer({ min: 1, max: 1001 }),
        level,
      )
      .map((a) => stats.bechhoferShots(...a)),
  ],
  ["normalEllipse", fc.tuple(column, column, level).map((a) => stats.normalEllipse(...a, "next"))],
  ["hotellingEllipse", fc.tuple(column, column, level).map((a) => stats.hotellingEllipse(...a))],
  ["hotellingTest", fc.tuple(column, column, odd, odd).map((a) => stats.hotellingTest(...a))],
  ["groupSummary", fc.tuple(column, column).map((a) => stats.groupSummary(...a))],
  ["regression", fc.tuple(column, table, level).map((a) => stats.regression(...a))],
  ["ols", fc.tuple(column, column, level).map((a) => stats.ols(...a))],
];

test.each(calls)("%s answers finite numbers or a sentence, whatever comes in", (_name, answers) => {
  fc.assert(
    fc.property(answers, (answer) => {
      expect(strayNumbers(answer)).toEqual([]);
    }),
    { numRuns: 50, seed: 1 },
  );
});

function strayNumbers(part: unknown): number[] {
  if (typeof part === "number") return Number.isFinite(part) ? [] : [part];
  return typeof part === "object" && part !== null ? Object.values(part).flatMap(strayNumbers) : [];
}
