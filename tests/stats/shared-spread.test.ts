import { expect, test } from "vitest";
import {
  type Anova,
  anova,
  brownForsythe,
  seededRandom,
  sharedSpread,
  spreadTest,
} from "../../src/stats/index.ts";

// Hines and O'Hara Hines 2000, by hand: distances from the median without the structural zero (odd size), with the
// twins d, d as one sqrt(2) d (even size).
test("the test of spreads leaves the structural zeros out", () => {
  const odd = [3, 10, 5, 4, 20];
  const even = [1, 4, 8, 30];
  expect(spreadTest([odd, even, [3, 9], [4], []])).toEqual(
    anova([[1, 2, 5, 15], [Math.SQRT2 * 2, 5, 24], [Math.SQRT2 * 3]]),
  );
});

// Hines and O'Hara Hines 2000: with the zeros in, the test hardly ever rejects for small odd groups; without them
// its size comes near its level, from below.
test("with three values a group the test comes near its level, where Brown and Forsythe's never rejects", () => {
  const random = seededRandom(3);
  const rounds = 2000;
  let plain = 0;
  let without = 0;
  for (let round = 0; round < rounds; round++) {
    const groups = Array.from({ length: 4 }, () => Array.from({ length: 3 }, () => random.normal()));
    if ((brownForsythe(groups) as Anova).p < 0.1) plain++;
    if ((spreadTest(groups) as Anova).p < 0.1) without++;
  }
  expect(plain / rounds).toBeLessThan(0.01);
  expect(without / rounds).toBeGreaterThan(0.05);
  expect(without / rounds).toBeLessThan(0.12);
});

test("spreads that differ tenfold are kept apart, and the reason says so", () => {
  const found = sharedSpread([
    [250, 251, 249, 250.5, 249.5],
    [250, 261, 238, 255, 246],
  ]);
  expect(found.shared).toBe(false);
  expect(found.reason).toContain("own spread");
});

test("two values a group are too few to tell spreads apart, and the reason says so", () => {
  const found = sharedSpread([
    [250, 251],
    [240, 260],
  ]);
  expect(found).toMatchObject({ shared: true, p: null, reason: expect.stringContaining("too few") });
});
