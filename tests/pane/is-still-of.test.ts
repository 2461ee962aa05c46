import { expect, test } from "vitest";
import { isStillOf } from "../../src/pane/is-still-of.ts";

const TABLE = "Build\tCarry\nA\t150\nB\t160";

test("a session holds its table while headings and a row of it are left", () => {
  expect(isStillOf(`${TABLE}\n`, TABLE)).toBe(true);
  expect(isStillOf("Build\tCarry\r\nA\t151\r\nB\t160\r\nC\t1", TABLE)).toBe(true);
});

test("a session that was started over, or filled with another table, does not", () => {
  expect(isStillOf("", TABLE)).toBe(false);
  expect(isStillOf("Build\tTotal\nA\t150", TABLE)).toBe(false);
  expect(isStillOf("Build\tCarry\nC\t170\nD\t171", TABLE)).toBe(false);
});

test("the first row of a table may be put right in the pane", () => {
  expect(isStillOf("Build\tCarry\nA\t151", "Build\tCarry\nA\t150")).toBe(true);
  expect(isStillOf("Build\tCarry", "Build\tCarry")).toBe(true);
});
