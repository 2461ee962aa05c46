import { expect, test } from "vitest";
import { wilson } from "../../src/stats/wilson.ts";

// Newcombe 1998, Statistics in Medicine 17, 857-872, table I, method 3 (score without continuity correction); figures
// from memory.
test.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
])("the limits of %i out of %i are those of the published table", (hits, tries, low, high) => {
  const found = wilson(hits, tries);
  expect(found).toEqual({
    share: hits / tries,
    low: expect.closeTo(low, 4),
    high: expect.closeTo(high, 4),
  });
});

test("limits of a share refuse more hits than tries and no tries at all", () => {
  expect(wilson(3, 2)).toMatchObject({ kind: "invalid" });
  expect(wilson(0, 0)).toMatchObject({ kind: "invalid" });
});

// Wilson's formula evaluated in Python with scipy 1.17.1's normal quantile.
test("limits of a share narrow with the confidence and reach 1 where every try hits", () => {
  expect(wilson(15, 148, 0.9)).toEqual({
    share: 15 / 148,
    low: expect.closeTo(0.06744326224687146, 10),
    high: expect.closeTo(0.1495729317464003, 10),
  });
  expect(wilson(20, 20)).toEqual({ share: 1, low: expect.closeTo(0.8388748419471806, 10), high: 1 });
});

test("limits of a share refuse parts of hits and tries, and a confidence of 95, by name", () => {
  expect(wilson(1.5, 4)).toMatchObject({ message: "hits is 1.5; a whole number from 0 to 4 would do." });
  expect(wilson(-1, 4)).toMatchObject({ message: "hits is -1; a whole number from 0 to 4 would do." });
  expect(wilson(1, 4.5)).toMatchObject({ message: "tries is 4.5; a whole number of at least 1 would do." });
  expect(wilson(1, 4, 95)).toMatchObject({ kind: "invalid", message: expect.stringContaining("confidence") });
});

test("no hit leaves 0 within the limits exactly, and no miss leaves 1, however many the tries", () => {
  for (let tries = 1; tries < 60; tries++) {
    expect(wilson(0, tries)).toMatchObject({ low: 0 });
    expect(wilson(tries, tries)).toMatchObject({ high: 1 });
  }
});
