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
