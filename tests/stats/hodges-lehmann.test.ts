import { expect, test } from "vitest";
import { hodgesLehmann, hodgesLehmannCentre } from "../../src/stats/hodges-lehmann.ts";
import { expectClose } from "./expect-close.ts";

// Hollander and Wolfe 1973, Nonparametric Statistical Methods: permeability of the placenta (p. 69), and depression
// scores of nine patients at two visits (p. 29). Estimates 0.305 and 0.46; data and estimates from memory.
const atTerm = [0.8, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46];
const early = [1.15, 0.88, 0.9, 0.74, 1.21];
const firstVisit = [1.83, 0.5, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.3];
const secondVisit = [0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29];

test("the shift of Hodges and Lehmann agrees with the textbook examples", () => {
  expectClose(hodgesLehmann(atTerm, early) as number, 0.305);
  expectClose(hodgesLehmannCentre(firstVisit.map((x, i) => x - secondVisit[i]!)) as number, 0.46);
});

test("one stray shot hardly moves the shift", () => {
  expect(hodgesLehmann([250, 252, 254, 90], [240, 242, 244, 246])).toBe(8);
  expect(hodgesLehmannCentre([250, 252, 254, 253, 90])).toBe(251.5);
});

test("nothing to compare gives a sentence", () => {
  expect(hodgesLehmann([], [1])).toMatchObject({ kind: "unavailable" });
  expect(hodgesLehmannCentre([Number.NaN])).toMatchObject({ kind: "unavailable" });
  expect(hodgesLehmann([1.7e308], [-1.7e308])).toMatchObject({ kind: "unavailable" });
});

test("more than four million pairs are too many, and four million are not", () => {
  const many = (n: number) => new Float64Array(n).fill(5);
  expect(hodgesLehmann(many(2001), many(2000))).toMatchObject({ kind: "unavailable" });
  expect(hodgesLehmannCentre(many(2829))).toMatchObject({ kind: "unavailable" });
  expect(hodgesLehmann(many(20), many(30))).toBe(0);
  expect(hodgesLehmann([1], [])).toMatchObject({ kind: "unavailable" });
});

// By hand: the means of pairs of 0, 1 and 10, each value with itself included, are 0, 0.5, 1, 5, 5.5 and 10.
test("the centre is the median over pairs, each of which counts once", () => {
  expect(hodgesLehmannCentre([0, 1, 10])).toBe(3);
});
