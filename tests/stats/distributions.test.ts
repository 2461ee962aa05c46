import fCdf from "@stdlib/stats-base-dists-f-cdf";
import tCdf from "@stdlib/stats-base-dists-t-cdf";
import { expect, test } from "vitest";
import {
  chiSquareQuantile,
  fQuantile,
  fUpperTail,
  normalQuantile,
  normalUpperTail,
  tQuantile,
  tUpperTail,
} from "../../src/stats/index.ts";
import { expectClose } from "./expect-close.ts";
import * as tables from "./published-tables.ts";

test("Student's t quantiles agree with the table, whole and broken degrees of freedom alike", () => {
  for (const [p, df, value] of tables.tQuantiles) expectClose(tQuantile(p, df), value);
});

test("two-sided probabilities of Student's t keep their digits down to 1e-30", () => {
  for (const [t, df, p] of tables.tTwoSided) expectClose(2 * tUpperTail(Math.abs(t), df), p, 5e-12);
});

test("upper tails of F keep their digits down to 1e-31", () => {
  for (const [f, above, below, p] of tables.fUpper) expectClose(fUpperTail(f, above, below), p, 1e-12);
});

test("F, chi-square and normal quantiles agree with the tables", () => {
  for (const [p, above, below, value] of tables.fQuantiles) expectClose(fQuantile(p, above, below), value);
  for (const [p, df, value] of tables.chiSquareQuantiles) expectClose(chiSquareQuantile(p, df), value);
  for (const [p, value] of tables.normalQuantiles) expectClose(normalQuantile(p), value);
});

test("upper tails of the normal distribution agree with the table", () => {
  for (const [z, p] of tables.normalCdf) expectClose(normalUpperTail(-z), p);
});

test("nothing exceeds an endless F, and everything an F of nought", () => {
  expect(fUpperTail(Infinity, 2, 5)).toBe(0);
  expect(fUpperTail(0, 2, 5)).toBe(1);
  expect(tUpperTail(Infinity, 5)).toBe(0);
  expect(tUpperTail(0, 5)).toBe(0.5);
});

// With one degree of freedom t is Cauchy: its quantile is the tangent of pi times the way from the middle.
test("quantiles of t near the middle keep their digits, and the middle itself is nought", () => {
  for (const way of [2 ** -50, 2 ** -40, -(2 ** -30), 0.01]) {
    expectClose(tQuantile(0.5 + way, 1), Math.tan(Math.PI * (0.5 + way - 0.5)));
  }
  for (const df of [1, 2.5, 1000]) expect(tQuantile(0.5, df)).toBe(0);
});

test("both tails of a symmetric distribution add up to one", () => {
  for (const t of [0, 1e-9, 0.3, 2, 40]) expect(tUpperTail(t, 7.5) + tUpperTail(-t, 7.5)).toBe(1);
});

// Second reference: the distribution functions of @stdlib, in the middle, where 1 - cdf loses nothing.
test("tails agree with the library's distribution functions in the middle", () => {
  for (const x of [0.1, 0.7, 1.5, 2.5]) {
    for (const df of [1, 2.5, 9, 60]) {
      expectClose(tUpperTail(x, df), tCdf(-x, df), 1e-12);
      expectClose(fUpperTail(x, df, 7), 1 - fCdf(x, df, 7), 1e-12);
    }
  }
});

// Recomputed with 60-digit arithmetic from the complement of the error function.
test("normal quantiles keep their digits down to 1e-300, and near one", () => {
  expectClose(normalQuantile(1e-12), -7.034483825301132, 1e-15);
  expectClose(normalQuantile(1e-20), -9.262340089798407, 1e-15);
  expectClose(normalQuantile(1e-100), -21.273453560965326, 1e-15);
  expectClose(normalQuantile(1e-300), -37.0470962993612, 1e-15);
  expectClose(normalQuantile(1 - 2 ** -40), 7.047700256664409, 1e-15);
});
