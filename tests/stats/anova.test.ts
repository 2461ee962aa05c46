import { expect, test } from "vitest";
import { type Anova, anova } from "../../src/stats/anova.ts";
import { expectClose } from "./expect-close.ts";
import { siRstv, smLs } from "./published-data.ts";

// Certified values: NIST Statistical Reference Datasets, One-Way Analysis of Variance.
test("the analysis of variance of SiRstv agrees with the certified values", () => {
  const found = anova(siRstv) as Anova;
  expect([found.dfBetween, found.dfWithin]).toEqual([4, 20]);
  // The certified sums hold nine or ten decimals; F and the spread hold 15 digits, of which the inputs,
  // seven-digit decimals with a common 196, leave about eleven.
  expect(found.sumBetween).toBeCloseTo(0.0511462616, 10);
  expect(found.sumWithin).toBeCloseTo(0.21663656, 10);
  expectClose(found.f, 1.18046237440255, 1e-11);
  expectClose(found.pooledSd, 0.104076068334656, 1e-11);
  // Upper tail of F, recomputed with 40-digit arithmetic.
  expectClose(found.p, 0.34944749340219272, 1e-11);
});

test("the analysis of variance of SmLs01 agrees with the certified values, p included", () => {
  const found = anova(smLs(0)) as Anova;
  expectClose(found.sumBetween, 1.68, 1e-13);
  expectClose(found.sumWithin, 1.8, 1e-13);
  expectClose(found.f, 21, 1e-13);
  expectClose(found.pooledSd, 0.1, 1e-13);
  expectClose(found.p, 2.5832643372689714e-22, 1e-11);
});

// The tenths of the inputs are rounded to doubles at 1e6: about nine digits of F can agree.
test("the analysis of variance of SmLs04 keeps the digits its inputs hold", () => {
  const found = anova(smLs(1_000_000)) as Anova;
  expectClose(found.f, 21, 2e-9);
  expectClose(found.pooledSd, 0.1, 1.2e-9);
});

test("empty groups do not count, and single values alone give a sentence", () => {
  expect(anova([[1, 2, 4], [], [3, 5]])).toEqual(
    anova([
      [1, 2, 4],
      [3, 5],
    ]),
  );
  expect(anova([[1], [2], [3]])).toMatchObject({ kind: "unavailable" });
  expect(
    anova([
      [1, 1],
      [2, 2],
    ]),
  ).toMatchObject({ kind: "unavailable" });
});

// By hand: means 2 and 5 about a grand mean of 3 leave 6 between and 2 within, so F is 3. With one degree of freedom
// on either side F is the square of a Cauchy value: its upper tail is 1 - 2 / pi arctan sqrt(3), a third.
test("one value more than there are groups is enough", () => {
  const found = anova([[1, 3], [5]]) as Anova;
  expect([found.dfBetween, found.dfWithin]).toEqual([1, 1]);
  expectClose(found.f, 3);
  expectClose(found.p, 1 / 3);
});

test("a single group, single values and equal values each hear what is missing", () => {
  const needed = { kind: "unavailable", message: expect.stringContaining("two groups") };
  expect(anova([[1, 2, 4]])).toMatchObject(needed);
  expect(anova([[1], [2], [3]])).toMatchObject(needed);
  expect(
    anova([
      [1, 1],
      [2, 2],
    ]),
  ).toMatchObject({ message: expect.stringContaining("the same") });
});
