import { describe, expect, test } from "vitest";
import { fitTwo } from "../../../src/flight/calibration/fit-two.ts";

const of = (...residuals: number[]) => Float64Array.from(residuals);

describe("least squares in two unknowns", () => {
  test("meets the normal equations of a straight line worked by hand", () => {
    // y = a + b x through (0, 1), (1, 3), (2, 4), (3, 4): n 4, sums x 6, xx 14, y 12, xy 23, so determinant 20,
    // a = (14 x 12 - 6 x 23) / 20 = 1.5, b = (4 x 23 - 6 x 12) / 20 = 1, residuals .5 -.5 -.5 .5, squares 1.
    const [x, y] = [
      [0, 1, 2, 3],
      [1, 3, 4, 4],
    ];
    const fit = fitTwo((a, b) => Float64Array.from(x, (at, i) => a + b * at - y[i]!), 1, 1)!;
    expect(fit.first).toBeCloseTo(1.5, 6);
    expect(fit.second).toBeCloseTo(1, 6);
    expect(fit.squares).toBeCloseTo(1, 9);
    expect(fit.inverse[0]).toBeCloseTo(14 / 20, 6);
    expect(fit.inverse[1]).toBeCloseTo(-6 / 20, 6);
    expect(fit.inverse[2]).toBeCloseTo(4 / 20, 6);
  });

  test("finds the bottom of a bent valley, where straight steps go uphill", () => {
    // Source: H. H. Rosenbrock, The Computer Journal 3 (1960) 175-184: 10 (b - a^2) and 1 - a from (-1.2, 1), least at (1, 1).
    const fit = fitTwo((a, b) => of(10 * (b - a * a), 1 - a), -1.2, 1)!;
    expect(fit.first).toBeCloseTo(1, 5);
    expect(fit.second).toBeCloseTo(1, 5);
    expect(fit.squares).toBeLessThan(1e-10);
  });

  test("takes shorter steps where a long one leads out of what can be computed", () => {
    // ln a - ln 0.1: from 1 a straight step leads to 1 - 2.3, where there is no logarithm.
    const fit = fitTwo((a, b) => (a > 0.002 ? of(Math.log(a) - Math.log(0.1), b - 2) : undefined), 1, 1)!;
    expect(fit.first).toBeCloseTo(0.1, 5);
    expect(fit.second).toBeCloseTo(2, 5);
  });

  test("has no answer where nothing can be computed, or nothing to one side", () => {
    const line = (a: number, b: number) => of(a - 2, b - 2, a + b - 3);
    const where = (inside: (a: number, b: number) => boolean) =>
      fitTwo((a, b) => (inside(a, b) ? line(a, b) : undefined), 1, 1);
    expect(where(() => true)).toBeDefined();
    expect(where(() => false)).toBeUndefined();
    expect(where((a) => a === 1)).toBeUndefined();
    expect(where((_, b) => b === 1)).toBeUndefined();
    expect(where((a) => a <= 1)).toBeUndefined();
    expect(where((_, b) => b >= 1)).toBeUndefined();
  });

  test("has no answer where only the sum of the two matters, or all but only that, in any unit", () => {
    expect(fitTwo((a, b) => of(a + b - 3, 2 * (a + b) - 6), 1, 1)).toBeUndefined();
    // By hand: squares of the slopes s^2 each, products s^2 (1 - e^2 / 2) nearly, so 1 - r^2 = e^2 to leading order.
    const nearly = (size: number, e: number) =>
      fitTwo((a, b) => of(size * (a + b - 2), size * e * (a - b)), 1, 1);
    for (const size of [1e-3, 1, 1e3]) {
      expect(nearly(size, 1e-4)).toBeUndefined();
      expect(nearly(size, 0.01)).toBeDefined();
    }
  });

  test("does not settle on a slope that goes down for ever", () => {
    expect(fitTwo((a, b) => of(Math.exp(-a / 4), b - 2), 1, 1)).toBeUndefined();
  });
});
