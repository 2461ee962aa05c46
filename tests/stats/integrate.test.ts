import { expect, test } from "vitest";
import { averageOverSpread, integrate } from "../../src/stats/index.ts";
import { solveRising } from "../../src/stats/solve-rising.ts";
import { expectClose } from "./expect-close.ts";

// Elementary integrals.
test("several integrals at once come out to the last digits", () => {
  const found = integrate((x) => [Math.exp(x), 1 / (1 + x * x), Math.cos(40 * x)], [0, 0.3, 1], 1e-13);
  expectClose(found[0], Math.E - 1, 1e-14);
  expectClose(found[1], Math.PI / 4, 1e-14);
  expectClose(found[2], Math.sin(40) / 40, 1e-13);
});

test("a spike a thousandth wide between the breaks is found", () => {
  const spike = (x: number) => [Math.exp(-(((x - 0.4) / 0.001) ** 2) / 2) + 1e-3];
  expectClose(integrate(spike, [0, 0.5, 1])[0], 0.001 * Math.sqrt(2 * Math.PI) + 1e-3, 1e-9);
});

// Moments of chi-square: the mean of u squared is 1, of u to the fourth 1 + 2 / df (Abramowitz and Stegun 26.4.33).
test("averages over an estimated spread have the moments of chi-square", () => {
  for (const df of [1, 2, 7.5, 40, 100000]) {
    const [square, fourth] = averageOverSpread(df, (u) => [u * u, u ** 4]);
    expectClose(square, 1);
    expectClose(fourth, 1 + 2 / df);
  }
});

test("a rising function is solved to the last digits", () => {
  expectClose(
    solveRising((x) => x ** 3, 2, 0, 5),
    Math.cbrt(2),
  );
  expectClose(solveRising(Math.exp, 10, -5, 30), Math.LN10);
});

// QUADPACK's QK15 has 15 points, and the 7 of Gauss among them are exact for polynomials of degree 13.
test("a polynomial is looked at fifteen times a panel, in any unit and beside a function that is nought", () => {
  const looks = (functions: (x: number) => number[], breaks = [-1, 2]) => {
    let count = 0;
    integrate((x) => {
      count++;
      return functions(x);
    }, breaks);
    return count;
  };
  expect(looks((x) => [x ** 12 - 3 * x])).toBe(15);
  expect(looks((x) => [x ** 12 - 3 * x], [-1, 0, 0.7, 2])).toBe(45);
  expect(looks(() => [0])).toBe(15);
  const bent = looks((x) => [Math.exp(5 * x) * Math.cos(9 * x)]);
  expect(bent).toBeGreaterThan(15);
  for (const unit of [1e-6, 1e6]) expect(looks((x) => [unit * Math.exp(5 * x) * Math.cos(9 * x)])).toBe(bent);
  expect(looks((x) => [Math.exp(5 * x) * Math.cos(9 * x), 0])).toBe(bent);
});

// Halving a stretch of 5 or of 1000 down to 1e-13 would take some fifty looks.
test("a rising function is solved in few looks, and at the edge and in the middle of what encloses it", () => {
  const looks = (f: (x: number) => number, value: number, low: number, high: number, root: number) => {
    let count = 0;
    const counted = (x: number) => {
      count++;
      return f(x);
    };
    expect(solveRising(counted, value, low, high)).toBeCloseTo(root, 12);
    return count;
  };
  expect(looks((x) => x ** 3, 2, 0, 5, Math.cbrt(2))).toBeLessThanOrEqual(16);
  expect(looks(Math.log, 1, 0.1, 1000, Math.E)).toBeLessThanOrEqual(16);
  expect(looks(Math.atan, 0, -3, 1, 0)).toBeLessThanOrEqual(10);
  expect(looks((x) => x, 0, -1, 3, 0)).toBeLessThanOrEqual(4);
  expect(looks((x) => x, 3, 3, 3, 3)).toBe(2);
  expect(looks((x) => 1e9 * x, 2e-9, 0, 1e-15, 2e-18)).toBeLessThanOrEqual(4);
});
