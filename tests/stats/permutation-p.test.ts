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

// By counting: whole numbers from 1 on are dealt out two and the rest, and only the lowest two lie as far out as the
// highest two.
test("a small group beside a large one is dealt out by the small one, up to two hundred thousand ways", () => {
  const up = (n: number) => Array.from({ length: n }, (_, i) => i + 1);
  const ways = (500 * 499) / 2;
  expectClose(permutationP([499, 500], up(498)) as number, 2 / ways);
  expectClose(permutationP(up(498), [499, 500]) as number, 2 / ways);
  expect(permutationP([1e9], up(199_999))).toBe(1 / 200_000);
  expect(permutationP([1e9], up(200_000))).toMatchObject({ kind: "unavailable" });
});

test("the probability does not hang on the unit, and values that are all the same have 1", () => {
  for (const unit of [1e-12, 1e12]) {
    const [first, second] = [sleepFirst.slice(0, 4), sleepSecond.slice(0, 4)];
    const scaled = permutationP(
      first.map((value) => value * unit),
      second.map((value) => value * unit),
    );
    expect(scaled).toBe(permutationP(first, second));
  }
  expect(permutationP([5, 5], [5, 5, 5])).toBe(1);
  expect(permutationP([1], [])).toMatchObject({ message: expect.stringContaining("at least one value") });
});
