import { test } from "vitest";
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
