import { describe, expect, test } from "vitest";
import { checkNumber } from "../../src/club/check-number.ts";

describe("checkNumber(value, rule)", () => {
  const rule = { name: "weight", unit: "grams" };

  test.each([
    [Number.NaN, rule, "weight is not a number; it should be grams."],
    [-3, { ...rule, least: 0, above: true }, "weight is -3; it should be grams, more than 0."],
    [0, { ...rule, least: 0, above: true }, "weight is 0; it should be grams, more than 0."],
    [-3, { ...rule, least: 0 }, "weight is -3; it should be grams, 0 or more."],
    [9, { ...rule, least: 0, greatest: 8 }, "weight is 9; it should be grams, 0 or more, at most 8."],
    [
      -0.00012345,
      { name: "balance", unit: "inches from the butt", least: 0 },
      "balance is -0.00012345 in; it should be inches from the butt, 0 in or more.",
    ],
    [
      41.23456,
      { name: "cut", unit: "inches", least: 0, greatest: 40 },
      "cut is 41.235 in; it should be inches, 0 in or more, at most 40 in.",
    ],
    [1e12, rule, "weight is 1000000000000; it should be grams, at most 1000000000."],
  ])("of %d names the argument, what was found and what would do", (value, wanted, message) => {
    expect(checkNumber(value, wanted)).toEqual({ kind: "invalid", message });
  });

  test("lets the bounds themselves pass", () => {
    expect(checkNumber(0, { ...rule, least: 0 })).toBeUndefined();
    expect(checkNumber(8, { ...rule, greatest: 8 })).toBeUndefined();
    expect(checkNumber(1e9, rule)).toBeUndefined();
    expect(checkNumber(1e-9, { ...rule, least: 0, above: true })).toBeUndefined();
  });
});
