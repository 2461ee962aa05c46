import { expect, test } from "vitest";
import { bechhoferFactor, bechhoferShots } from "../../src/stats/bechhofer-shots.ts";
import { expectClose } from "./expect-close.ts";

// Bechhofer 1954, table I, recomputed with 40-digit arithmetic to eight digits, for 0.75, 0.90, 0.95, 0.99.
const table: [number, number[]][] = [
  [2, [0.95387255, 1.8123876, 2.3261743, 3.2899527]],
  [3, [1.4338306, 2.2301998, 2.7101026, 3.617298]],
  [4, [1.6821952, 2.4515694, 2.9162271, 3.796956]],
  [5, [1.8462776, 2.5997037, 3.0551726, 3.9195843]],
  [6, [1.9673632, 2.709954, 3.1590942, 4.0120897]],
  [8, [2.1407311, 2.8691386, 3.3098805, 4.1474829]],
  [10, [2.2636674, 2.9829271, 3.418179, 4.2455575]],
];

test.each(table)("Bechhofer's constants for %d builds agree to the eight printed digits", (k, factors) => {
  [0.75, 0.9, 0.95, 0.99].forEach((probability, i) => {
    expectClose(bechhoferFactor(k, probability), factors[i]!, 3e-8);
  });
});

test("shots are the constant times spread over lead, squared and rounded up", () => {
  expect(bechhoferShots(8, 5, 4, 0.9)).toBe(Math.ceil((2.4515694 * 1.6) ** 2));
  expect(bechhoferShots(8, 5, 4, 0.2)).toBe(1);
});

test("one build, no lead and a probability of 90 are refused by name", () => {
  expect(bechhoferShots(8, 5, 1, 0.9)).toMatchObject({ message: expect.stringContaining("k is 1") });
  expect(bechhoferShots(8, 0, 3, 0.9)).toMatchObject({ message: expect.stringContaining("delta") });
  expect(bechhoferShots(8, 5, 3, 90)).toMatchObject({ message: expect.stringContaining("probability") });
});

test("no spread, parts of builds and too many of them are refused by name", () => {
  expect(bechhoferShots(0, 5, 3, 0.9)).toMatchObject({ message: expect.stringContaining("sd is 0") });
  expect(bechhoferShots(Number.NaN, 5, 3, 0.9)).toMatchObject({
    message: expect.stringContaining("sd is NaN"),
  });
  expect(bechhoferShots(8, 5, 2.5, 0.9)).toMatchObject({ message: expect.stringContaining("k is 2.5") });
  expect(bechhoferShots(8, 5, 1001, 0.9)).toMatchObject({ message: expect.stringContaining("k is 1001") });
  expect(bechhoferShots(8, 5, 1000, 0.9)).toBeTypeOf("number");
});

test("a probability that guessing has needs no lead", () => {
  expect(bechhoferFactor(4, 0.25)).toBe(0);
  expect(bechhoferFactor(2, 0.5)).toBe(0);
  expect(bechhoferFactor(4, 0.26)).toBeGreaterThan(0);
});
