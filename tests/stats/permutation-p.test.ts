import { expect, test } from "vitest";
import { permutationP } from "../../src/stats/permutation-p.ts";
import { expectClose } from "./expect-close.ts";
import { bloodCounts, sleepFirst, sleepSecond } from "./published-data.ts";

// Reference library: scipy 1.17.1, permutation_test of the distance of the means with every split counted:
// 184 756 and 210 splits.
test("the exact permutation p agrees with a reference library", () => {
  expectClose(permutationP(sleepFirst, sleepSecond) as number, 0.08144796380090498);
  expectClose(permutationP(bloodCounts[0]!, bloodCounts[1]!) as number, 0.3);
});

// By counting: of the 20 ways to deal six values three and three, only the two outermost are as far apart.
test("three against three cannot give less than one in ten", () => {
  expect(permutationP([1, 2, 3], [4, 5, 6])).toBe(0.1);
  expect(permutationP([1, 2, 3], [400, 500, 600])).toBe(0.1);
});

test("equal values have probability one, and rounding does not break ties", () => {
  expect(permutationP([0.1, 0.2, 0.3], [0.3, 0.2, 0.1])).toBe(1);
  expect(permutationP([0.1, 0.2], [0.3])).toBeCloseTo(2 / 3, 14);
});

test("too many splits and empty groups give a sentence", () => {
  const many = Array.from({ length: 12 }, (_, i) => i);
  expect(permutationP(many, many)).toMatchObject({
    kind: "unavailable",
    message: expect.stringContaining("200000"),
  });
  expect(permutationP([], [1])).toMatchObject({ kind: "unavailable" });
  expect(permutationP(Array(500).fill(1), Array(500).fill(2))).toMatchObject({ kind: "unavailable" });
});
