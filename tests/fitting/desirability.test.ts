import { describe, expect, it } from "vitest";
import { desirability, overallDesirability } from "../../src/fitting/desirability.ts";

const window = { from: 44, to: 52, margin: 4 };

describe("desirability(value, window), two-sided with exponent 1 (Derringer and Suich 1980, formula 2)", () => {
  it.each([
    [48, 1],
    [44, 1],
    [52, 1],
    [43, 0.75],
    [42, 0.5],
    [55, 0.25],
    [40, 0],
    [56, 0],
    [10, 0],
  ])("of %d is %d", (value, wanted) => expect(desirability(value, window)).toBeCloseTo(wanted, 12));
});

describe("overallDesirability(parts), their geometric mean", () => {
  it("of 0.25 and 1 is 0.5", () => expect(overallDesirability([0.25, 1])).toBeCloseTo(0.5, 12));
  it("of one part is the part", () => expect(overallDesirability([0.4])).toBeCloseTo(0.4, 12));
  it("counts a part of nought as a twentieth", () =>
    expect(overallDesirability([0, 1])).toBeCloseTo(Math.sqrt(0.05), 12));
});
