import { describe, expect, test } from "vitest";
import { resolveTrims } from "../../src/club/resolve-trims.ts";
import { refusal } from "./answer.ts";

describe("resolveTrims(rawLength, trims)", () => {
  // By hand: tip, butt and what is left add up to the raw length.
  test.each([
    [{}, { tip: 0, butt: 0, cutLength: 40 }],
    [{ tip: 1 }, { tip: 1, butt: 0, cutLength: 39 }],
    [
      { tip: 1, butt: 2 },
      { tip: 1, butt: 2, cutLength: 37 },
    ],
    [
      { tip: 1, cutLength: 37 },
      { tip: 1, butt: 2, cutLength: 37 },
    ],
    [
      { tip: 1, butt: 2, cutLength: 37 },
      { tip: 1, butt: 2, cutLength: 37 },
    ],
  ])("of 40 inches with %j", (trims, resolved) => {
    expect(resolveTrims(40, trims)).toEqual(resolved);
  });

  test("three entries that miss the raw length by less than a saw cut are taken, the butt giving way", () => {
    expect(resolveTrims(40, { tip: 1, butt: 2, cutLength: 37.005 })).toEqual({
      tip: 1,
      butt: expect.closeTo(1.995, 9),
      cutLength: 37.005,
    });
    expect(resolveTrims(40, { tip: 1, cutLength: 39.005 })).toEqual({ tip: 1, butt: 0, cutLength: 39 });
  });

  test.each([
    [0, {}, /^raw length is 0/],
    [40, { tip: -1 }, /^tip trim is -1/],
    [40, { butt: -1 }, /^butt trim is -1/],
    [40, { cutLength: 0 }, /^cut length is 0/],
    [40, { tip: 1, butt: 2, cutLength: 36 }, /leaves 37 in;/],
    [40, { tip: 41 }, /is 40 in, too short for 41 in off the tip and 0 in off the butt\.$/],
    [40, { tip: 20, butt: 21 }, /too short for 20 in off the tip and 21 in off the butt\.$/],
    [40, { tip: 2, cutLength: 39 }, /too short for 2 in off the tip and 39 in of cut length\.$/],
  ])("refuses %d inches with %j", (raw, trims, message) => {
    expect(refusal(resolveTrims(raw, trims))).toMatch(message);
  });
});
