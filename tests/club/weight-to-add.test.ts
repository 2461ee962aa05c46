import { describe, expect, test } from "vitest";
import { weightToAdd } from "../../src/club/weight-to-add.ts";
import { answer, refusal } from "./answer.ts";

describe("weightToAdd(from, to, position)", () => {
  test("is the moment over the arm, in grams", () => {
    // By hand: two points are 3.5 in-oz; over 30 in 0.116667 oz, 3.30744 g. At the butt the arm is -14 in.
    expect(answer(weightToAdd("D0", "D2", 44))).toBeCloseTo(3.30744, 5);
    expect(answer(weightToAdd("D2", "D0", 44))).toBeCloseTo(-3.30744, 5);
    expect(answer(weightToAdd("D2", "D0", 0))).toBeCloseTo(7.08738, 5);
    expect(answer(weightToAdd("d3", "D3.0", 30))).toBe(0);
  });

  test.each([
    ["D0", "D2", 14, "fulcrum"],
    ["D0", "D2", -1, "position"],
    ["D0", "D2", Number.NaN, "position"],
    ["X0", "D2", 30, '"X0"'],
    ["D0", "D22", 30, '"D22"'],
  ])("refuses (%s, %s, %s): %s", (from, to, position, message) => {
    expect(refusal(weightToAdd(from, to, position))).toContain(message);
  });
});
