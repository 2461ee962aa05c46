import { describe, expect, test } from "vitest";
import { swingweight } from "../../src/club/swingweight.ts";
import { isProblem } from "../../src/outcome/problem.ts";

describe("swingweight(weight, balance, fulcrum)", () => {
  test("reads the moment about 14 inches off the scale", () => {
    // By hand: 430 / 28.349523125 oz * (29.1 - 14) in = 229.03 in-oz; (229.03 - 213.5) / 1.75 = 8.88 points over D0.
    expect(swingweight(430, 29.1)).toBe("D8.9");
  });

  test("of 15.25 ounces held 14 inches beyond the fulcrum is D0.0", () => {
    // The scale's table: D0 balances 15.25 oz at 14 in (anchor from memory).
    expect(swingweight(15.25 * 28.349523125, 28)).toBe("D0.0");
  });

  test("about another fulcrum reads that moment off the same inch-ounce scale", () => {
    // By hand: 430 / 28.349523125 * 17.1 = 259.37 in-oz; (259.37 - 248.5) / 1.75 = 6.21 points over F0.
    expect(swingweight(430, 29.1, 12)).toBe("F6.2");
  });

  test("refuses a balance point at the fulcrum and gives the moment", () => {
    expect(swingweight(430, 14)).toMatchObject({ message: expect.stringContaining("0.00 inch-ounces") });
  });

  test.each([
    [Number.NaN, 29, 14, "weight"],
    [0, 29, 14, "weight"],
    [430, Number.POSITIVE_INFINITY, 14, "balance"],
    [430, 29, -1, "fulcrum"],
  ])("refuses (%s, %s, %s) and names the %s", (weight, balance, fulcrum, name) => {
    const answer = swingweight(weight, balance, fulcrum);
    expect(isProblem(answer) && answer.message).toMatch(new RegExp(`^${name} `));
  });
});

test("a club without weight, or one that balances at its butt, has no swingweight", () => {
  for (const [weight, balance, name] of [
    [0, 29, "weight is 0"],
    [430, 0, "balance is 0"],
  ] as const) {
    expect(swingweight(weight, balance)).toMatchObject({
      kind: "invalid",
      message: expect.stringContaining(name),
    });
  }
});
