import { expect, test } from "vitest";
import { outOfHundred, roundedNote } from "../../src/fitting/out-of-hundred.ts";

const NOTE = /rounded.* 100\.$/;

test("a chance is said in whole chances of a hundred, and never as certain either way", () => {
  const said = [0.775, 0.774, 0.984, 0.985, 1, 0.005, 0.0049, 0].map(outOfHundred);
  expect(said).toEqual(["78", "77", "98", "99 or more", "99 or more", "1", "fewer than 1", "fewer than 1"]);
});

test("chances that make 99 or 101 once they are rounded are said to be rounded", () => {
  // 33 + 33 + 33, and 67 + 17 + 17.
  expect(roundedNote([1 / 3, 1 / 3, 1 / 3])).toMatch(NOTE);
  expect(roundedNote([2 / 3, 1 / 6, 1 / 6])).toMatch(NOTE);
  expect(roundedNote([0.604, 0.394, 0.002])).toMatch(NOTE);
});

test("nothing is said of rounding where the chances make 100, or where nobody can add them up", () => {
  expect(roundedNote([0.78, 0.22])).toBe("");
  expect(roundedNote([0.604, 0.396])).toBe("");
  expect(roundedNote([0.992, 0.004, 0.004])).toBe("");
});
