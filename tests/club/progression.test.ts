import { describe, expect, test } from "vitest";
import { progression } from "../../src/club/progression.ts";

// Expected values by hand: value + step * (places after the reference).
describe("progression(clubs, reference, value, step)", () => {
  const clubs = ["4", "5", "6", "7", "8", "9", "PW"];

  test("adds the step for each club shorter and takes it off for each longer", () => {
    expect(progression(clubs, "6", 100, 3)).toEqual([94, 97, 100, 103, 106, 109, 112]);
  });

  test("descends with a negative step and stays with none", () => {
    expect(progression(clubs, "4", 38.5, -0.5)).toEqual([38.5, 38, 37.5, 37, 36.5, 36, 35.5]);
    expect(progression(clubs, "4", 7, 0)).toEqual([7, 7, 7, 7, 7, 7, 7]);
  });

  test("has no binary dust in a decimal step, so that a figure can be looked for", () => {
    expect(progression(clubs, "4", 37.1, -0.7)).toEqual([37.1, 36.4, 35.7, 35, 34.3, 33.6, 32.9]);
  });

  test("matches the reference whatever its case, blanks, or being a number", () => {
    expect(progression(["8", " 9 ", "PW"], " pw", 50, 1)).toEqual([48, 49, 50]);
    expect(progression([4, 5, 6], 5, 50, 1)).toEqual([49, 50, 51]);
  });

  test("refuses an unknown reference and lists the clubs", () => {
    expect(progression(clubs, "3", 100, 3)).toMatchObject({
      kind: "invalid",
      message: expect.stringContaining("4, 5, 6, 7, 8, 9, PW"),
    });
  });

  test("refuses a club that stands twice and lists the clubs", () => {
    expect(progression(["5", "6", "5"], "6", 1, 1)).toMatchObject({
      message: expect.stringContaining("5, 6, 5"),
    });
  });

  test("refuses an empty list and figures that are none", () => {
    expect(progression([], "6", 1, 1)).toMatchObject({ message: expect.stringContaining("clubs") });
    expect(progression(clubs, "6", Number.NaN, 1)).toMatchObject({
      message: expect.stringMatching(/^value/),
    });
    expect(progression(clubs, "6", 1, Number.NaN)).toMatchObject({ message: expect.stringMatching(/^step/) });
  });
});

test("labels are told without the blanks around them, and a list of none is refused as empty", () => {
  const twice = progression([" 7 ", "8", "7"], "8", 100, 3);
  expect(twice).toMatchObject({ message: expect.stringContaining('"7" twice') });
  expect(twice).toMatchObject({ message: expect.stringContaining("Found: 7, 8, 7.") });
  expect(progression([], "7", 100, 3)).toMatchObject({ message: expect.stringContaining("clubs is empty") });
});
