import { expect, test } from "vitest";
import { hedgesG } from "../../src/stats/hedges-g.ts";
import { expectClose } from "./expect-close.ts";
import { autoJapan, autoUs, setosa, sleepFirst, sleepSecond, versicolor } from "./published-data.ts";

// Published data (Student 1908, Fisher 1936, NIST AUTO83B), exact gamma form, recomputed with 40-digit arithmetic.
test("Hedges' g with the exact correction agrees with 40-digit arithmetic", () => {
  expectClose(hedgesG(setosa, versicolor) as number, -2.088045619342058);
  expectClose(hedgesG(sleepFirst, sleepSecond) as number, -0.7969352391911207);
  expectClose(hedgesG(autoUs, autoJapan) as number, -1.625931382375266);
});

// Hedges 1981, formula 6e, by hand: c(2) is 1 / sqrt(pi); c(10) is gamma(5) / (sqrt(5) gamma(9 / 2)), where
// gamma(5) = 24 and gamma(9 / 2) = 105 sqrt(pi) / 16.
test("the correction is the published one for two and for ten degrees of freedom", () => {
  expectClose(hedgesG([1, 3], [0, 2]) as number, 1 / Math.sqrt(2) / Math.sqrt(Math.PI));
  const six = [-5, -3, -1, 1, 3, 5];
  const oneSpreadUp = six.map((x) => x + Math.sqrt(14));
  expectClose(hedgesG(oneSpreadUp, six) as number, (24 * 16) / (105 * Math.sqrt(5 * Math.PI)));
});

test("too few values or no spread hear what is missing", () => {
  const needed = { kind: "unavailable", message: expect.stringContaining("four values") };
  expect(hedgesG([1], [2, 3])).toMatchObject(needed);
  expect(hedgesG([1, 2], [3])).toMatchObject(needed);
  expect(hedgesG([1, 1], [2, 2])).toMatchObject({ message: expect.stringContaining("no spread") });
});

test("an empty group has no effect size, and a single value beside three has one", () => {
  expect(hedgesG([], [1, 2, 3, 4])).toMatchObject({ kind: "unavailable" });
  expect(hedgesG([1, 2, 3, 4], [])).toMatchObject({ kind: "unavailable" });
  // By hand: squares about the mean of 1, 2, 3 are 2, with 2 degrees of freedom a spread of 1; c(2) is 1 / sqrt(pi).
  expectClose(hedgesG([4], [1, 2, 3]) as number, 2 / Math.sqrt(Math.PI));
  expectClose(hedgesG([1, 2, 3], [4]) as number, -2 / Math.sqrt(Math.PI));
});
