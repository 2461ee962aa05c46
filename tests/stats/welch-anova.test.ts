import { expect, test } from "vitest";
import type { Anova } from "../../src/stats/anova.ts";
import { brownForsythe } from "../../src/stats/brown-forsythe.ts";
import type { MeanDifference } from "../../src/stats/welch.ts";
import { welch } from "../../src/stats/welch.ts";
import { type WelchAnova, welchAnova } from "../../src/stats/welch-anova.ts";
import { expectClose } from "./expect-close.ts";
import { bloodCounts, setosa, versicolor } from "./published-data.ts";

// Reference library: scipy 1.17.1, f_oneway(equal_var=False) and levene(center="median").
test("Welch's analysis of variance agrees with a reference library", () => {
  const found = welchAnova(bloodCounts) as WelchAnova;
  expectClose(found.f, 5.0020743618912435);
  expectClose(found.p, 0.043416827515369086);
});

test("Brown and Forsythe's test agrees with a reference library", () => {
  const found = brownForsythe(bloodCounts) as Anova;
  expectClose(found.f, 1.147120432387703);
  expectClose(found.p, 0.3500425999466666);
});

// Welch 1951: for two groups the statistic is Welch's t squared, with the same degrees of freedom.
test("for two groups Welch's analysis of variance is Welch's t", () => {
  const several = welchAnova([setosa, versicolor]) as WelchAnova;
  const two = welch(setosa, versicolor) as MeanDifference;
  expectClose(several.f, two.t ** 2);
  expectClose(several.dfWithin, two.df);
  expectClose(several.p, two.p, 1e-11);
});

test("a group without spread or with a single value gives a sentence", () => {
  expect(
    welchAnova([
      [1, 2],
      [3, 3],
    ]),
  ).toMatchObject({ kind: "unavailable" });
  expect(welchAnova([[1, 2], [3]])).toMatchObject({ kind: "unavailable" });
});

test("empty groups do not count, and two values a group are enough", () => {
  const pairs = [
    [1, 3],
    [4, 8],
  ];
  const found = welchAnova([pairs[0]!, [], pairs[1]!]) as WelchAnova;
  const two = welch(pairs[0]!, pairs[1]!) as MeanDifference;
  expect(found.dfBetween).toBe(1);
  expectClose(found.f, two.t ** 2);
  expect((welchAnova(bloodCounts) as WelchAnova).dfBetween).toBe(2);
});

test("a group of one value over and over is told apart from figures out of range", () => {
  const same = { kind: "unavailable", message: expect.stringContaining("the same") };
  expect(
    welchAnova([
      [1, 2],
      [3, 3],
    ]),
  ).toMatchObject(same);
});
