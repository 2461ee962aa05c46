import { expect, test } from "vitest";
import { isProblem } from "../../src/outcome/problem.ts";
import { type Summary, summary } from "../../src/stats/summary.ts";
import { expectClose } from "./expect-close.ts";
import { lew } from "./published-data.ts";

const answer = (values: number[]) => {
  const found = summary(values);
  if (isProblem(found)) throw new Error(found.message);
  return found as Summary;
};
const repeat = (first: number, second: number, third: number) => [
  first,
  ...Array.from({ length: 500 }, () => [second, third]).flat(),
];

// Certified values: NIST Statistical Reference Datasets, Univariate Summary Statistics.
test("the certified mean and spread of Lew come out to fourteen digits", () => {
  const found = answer(lew);
  expect(found.n).toBe(200);
  expectClose(found.mean, -177.435, 1e-14);
  expectClose(found.sd, 277.332168044316, 2e-15);
});

test("three large neighbouring values (NumAcc1) have mean and spread exact", () => {
  const found = answer([10000001, 10000003, 10000002]);
  expect(found.mean).toBe(10000002);
  expect(found.sd).toBe(1);
});

// The decimals of these inputs are rounded to doubles before anything is computed: the spread 0.1 of values near
// 1e6 (1e7) can agree to about 1.2e-10 / 0.1 (1.9e-9 / 0.1) at best, which is the tolerance.
test("NumAcc2, 3 and 4 keep every digit their inputs hold", () => {
  expectClose(answer(repeat(1.2, 1.1, 1.3)).mean, 1.2, 2e-16);
  expectClose(answer(repeat(1.2, 1.1, 1.3)).sd, 0.1, 1e-14);
  expectClose(answer(repeat(1000000.2, 1000000.1, 1000000.3)).mean, 1000000.2, 2e-16);
  expectClose(answer(repeat(1000000.2, 1000000.1, 1000000.3)).sd, 0.1, 1.2e-9);
  expectClose(answer(repeat(10000000.2, 10000000.1, 10000000.3)).mean, 10000000.2, 3e-16);
  expectClose(answer(repeat(10000000.2, 10000000.1, 10000000.3)).sd, 0.1, 1.9e-8);
});

// NIST/SEMATECH e-Handbook 1.3.5.2: mean plus and minus t s / sqrt(n); t(0.975, 9) from Abramowitz and Stegun 1964,
// table 26.10; the variance of 1 to 10 is 55 / 6.
test("the limits of the mean are the mean plus and minus t times the standard error", () => {
  const found = answer([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  const half = (2.2621571627982053 * Math.sqrt(55 / 6)) / Math.sqrt(10);
  expectClose(found.low, 5.5 - half);
  expectClose(found.high, 5.5 + half);
  expect(found.median).toBe(5.5);
  expect([found.least, found.greatest]).toEqual([1, 10]);
});

test("least, greatest and middle are found wherever they stand", () => {
  expect(answer([3, 1, 5, 2, 4])).toMatchObject({ least: 1, greatest: 5, median: 3 });
  expect(answer([5, 2, 1])).toMatchObject({ least: 1, greatest: 5, median: 2 });
});

test("missing values are left out", () => {
  expect(summary([3, Number.NaN, 5])).toEqual(summary(Float64Array.of(3, 5)));
});

test("one value has a mean but no spread and no limits", () => {
  expect(answer([7])).toEqual({
    n: 1,
    mean: 7,
    sd: null,
    low: null,
    high: null,
    median: 7,
    least: 7,
    greatest: 7,
  });
});

test("no values, a confidence of 95 and values beyond double precision each get a sentence", () => {
  expect(summary([Number.NaN])).toMatchObject({ kind: "unavailable" });
  expect(summary([1, 2], 95)).toMatchObject({ kind: "invalid", message: expect.stringContaining("95") });
  expect(summary([1e300, -1e300])).toMatchObject({ kind: "unavailable" });
});
