import { expect, test } from "vitest";
import { type Line, ols, type Regression, regression } from "../../src/stats/index.ts";
import { expectClose } from "./expect-close.ts";
import { longley, norris } from "./published-data.ts";

// Certified values: NIST Statistical Reference Datasets, Linear Regression.
test("the line through Norris agrees with the certified values", () => {
  const found = ols(
    norris.map(([, x]) => x!),
    norris.map(([y]) => y!),
  ) as Line;
  expectClose(found.intercept.value, -0.262323073774029, 2e-12);
  expectClose(found.intercept.standardError, 0.232818234301152, 2e-12);
  expectClose(found.slope.value, 1.00211681802045, 1e-14);
  expectClose(found.slope.standardError, 0.000429796848199937, 2e-12);
  expectClose(found.residualSd, 0.884796396144373, 2e-12);
  expectClose(found.rSquared, 0.999993745883712, 1e-14);
  expect(found.df).toBe(34);
});

const certified: [number, number][] = [
  [-3482258.63459582, 890420.383607373],
  [15.0618722713733, 84.9149257747669],
  [-0.035819179292591, 0.0334910077722432],
  [-2.02022980381683, 0.488399681651699],
  [-1.03322686717359, 0.214274163161675],
  [-0.0511041056535807, 0.22607320006937],
  [1829.15146461355, 455.478499142212],
];

test("the nearly dependent columns of Longley agree with the certified values to twelve digits", () => {
  const found = regression(
    longley.map((row) => row[0]!),
    [1, 2, 3, 4, 5, 6].map((j) => longley.map((row) => row[j]!)),
  ) as Regression;
  [found.intercept, ...found.slopes].forEach((coefficient, i) => {
    expectClose(coefficient.value, certified[i]![0]);
    expectClose(coefficient.standardError, certified[i]![1]);
  });
  expectClose(found.residualSd, 304.854073561965);
  expectClose(found.rSquared, 0.995479004577296);
});

// t(0.975, 3) = 3.1824463052837095 (Abramowitz and Stegun, table 26.10); sums by hand: slope 0.6, residual sum 2.4.
test("limits of a slope are t times its standard error", () => {
  const found = ols([1, 2, 3, 4, 5], [2, 4, 5, 4, 5]) as Line;
  const standardError = Math.sqrt(2.4 / 3 / 10);
  expectClose(found.slope.value, 0.6);
  expectClose(found.slope.high, 0.6 + 3.1824463052837095 * standardError);
  expectClose(found.slope.low, 0.6 - 3.1824463052837095 * standardError);
});

test("rows with a missing figure are left out", () => {
  expect(ols([1, 2, 9, 3, 4, 5], [2, 4, Number.NaN, 5, 4, 5])).toEqual(ols([1, 2, 3, 4, 5], [2, 4, 5, 4, 5]));
});

test("too few rows, a column that does not vary and one that follows from others each give a sentence", () => {
  expect(ols([1, 2], [3, 4])).toMatchObject({ kind: "unavailable", message: expect.stringContaining("2") });
  expect(ols([60, 60, 60], [1, 2, 3])).toMatchObject({ kind: "unavailable" });
  expect(
    regression(
      [1, 5, 2, 7, 3],
      [
        [1, 2, 3, 4, 5],
        [2.1, 4.1, 6.1, 8.1, 10.1],
      ],
    ),
  ).toMatchObject({ kind: "unavailable", message: expect.stringContaining("Column 2") });
  expect(regression([1, 2, 3], [])).toMatchObject({ kind: "invalid" });
});

// The same five points: scipy 1.17.1, linregress and t.ppf.
test("probabilities, limits of the intercept and a confidence of 90 agree with a reference library", () => {
  const found = ols([1, 2, 3, 4, 5], [2, 4, 5, 4, 5], 0.9) as Line;
  expectClose(found.slope.p, 0.12402706265755445);
  expectClose(found.intercept.value, 2.2);
  expectClose(found.intercept.standardError, 0.9380831519646857);
  expectClose(found.intercept.p, 0.10074345608542003);
  expectClose(found.intercept.low, 2.2 - 2.3533634348018233 * 0.9380831519646857);
  expectClose(found.intercept.high, 2.2 + 2.3533634348018233 * 0.9380831519646857);
  expectClose(found.rSquared, 0.6);
  expect(found).toMatchObject({ n: 5, df: 3 });
});

test("a line that every point lies on is certain, and so is that equal values do not change", () => {
  const level = ols([1, 2, 3, 4], [7, 7, 7, 7]) as Line;
  expect(level).toMatchObject({ rSquared: 0, residualSd: 0, slope: { value: 0, p: 1, low: 0, high: 0 } });
  expect(level.intercept).toMatchObject({ value: 7, p: 0 });
});

test("columns shorter than y leave rows out, and too few rows say how many there are", () => {
  expect(ols([1, 2, 3, 4, 5], [2, 4, 5, 4, 5, 9])).toEqual(ols([1, 2, 3, 4, 5], [2, 4, 5, 4, 5]));
  expect(ols([1, 2], [3, 4])).toMatchObject({
    message: "A regression on 1 column(s) needs 3 full rows; there are 2.",
  });
  expect(ols([1, 2, 3], [3, 4, 6])).toMatchObject({ df: 1 });
  expect(ols([1, 2, 3], [3, 4, 6], 95)).toMatchObject({ kind: "invalid" });
});

test("a column that does not vary is told apart from figures out of range, and a small unit is no reason", () => {
  expect(regression([1, 2, 4, 3], [[5, 5, 5, 5]])).toMatchObject({
    kind: "unavailable",
    message: expect.stringContaining("Column 1 does not vary"),
  });
  const plain = regression([1, 2, 4, 3], [[1, 2, 3, 5]]) as Regression;
  const small = regression([1, 2, 4, 3], [[1e-12, 2e-12, 3e-12, 5e-12]]) as Regression;
  expectClose(small.slopes[0]!.value, plain.slopes[0]!.value * 1e12);
  expectClose(small.slopes[0]!.p, plain.slopes[0]!.p);
});
