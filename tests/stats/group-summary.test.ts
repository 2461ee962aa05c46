import { expect, test } from "vitest";
import { type GroupSummary, groupSummary, seededRandom } from "../../src/stats/index.ts";
import { QUICK } from "../quick.ts";
import { expectClose } from "./expect-close.ts";

test("a group of four at the corners of a rectangle is measured by hand", () => {
  const found = groupSummary([246, 246, 254, 254], [-1, 5, -1, 5]) as GroupSummary;
  expect(found).toMatchObject({ n: 4, carryMean: 250, offlineMean: 2, meanRadius: 5, halfRadius: 5 });
  expect(found.extremeSpread).toBe(10);
  expectClose(found.carrySd, Math.sqrt(64 / 3));
  expectClose(found.offlineSd, Math.sqrt(12));
  expect(found.ellipse!.angle).toBe(0);
});

// Expected size of round normal groups of spread 1. Mean radius: sqrt(pi / 2) sqrt((n - 1) / n), exact. Extreme
// spread: 3.0657 and 3.8115 for five and ten shots, from a million-fold simulation with numpy (default_rng(1)).
const expected = [
  { n: 5, meanRadius: 1.1209982432795857, extremeSpread: 3.06565 },
  { n: 10, meanRadius: 1.1889981892818033, extremeSpread: 3.81146 },
];

test.skipIf(QUICK).each(expected)("round groups of $n shots come out as large as theory says", (row) => {
  const random = seededRandom(7);
  const rounds = 20000;
  let radius = 0;
  let spread = 0;
  for (let round = 0; round < rounds; round++) {
    const draw = () => Array.from({ length: row.n }, () => random.normal());
    const found = groupSummary(draw(), draw()) as GroupSummary;
    radius += found.meanRadius! / rounds;
    spread += found.extremeSpread! / rounds;
  }
  // The spread of a single group's figure is below 0.4 and 0.8: four standard errors.
  expect(Math.abs(radius - row.meanRadius)).toBeLessThan((4 * 0.4) / Math.sqrt(rounds));
  expect(Math.abs(spread - row.extremeSpread)).toBeLessThan((4 * 0.8) / Math.sqrt(rounds));
});

test("a shot without offline is left out, and a single shot has a place but no size", () => {
  expect(groupSummary([250, 260, 240], [1, Number.NaN, 3])).toEqual(groupSummary([250, 240], [1, 3]));
  expect(groupSummary([250], [1])).toEqual({
    n: 1,
    carryMean: 250,
    offlineMean: 1,
    carrySd: null,
    offlineSd: null,
    meanRadius: null,
    halfRadius: null,
    extremeSpread: null,
    ellipse: null,
  });
  expect(groupSummary([Number.NaN], [1])).toMatchObject({ kind: "unavailable" });
});
