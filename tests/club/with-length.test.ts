import { describe, expect, test } from "vitest";
import { withLength } from "../../src/club/with-length.ts";

describe("withLength(parts, length)", () => {
  const parts = {
    length: 37,
    head: { weight: 268, place: 36.5 },
    shaft: { weight: 110, length: 41 },
    trims: { tip: 1, butt: 3 },
    grip: { weight: 50, length: 10.5 },
    ferrule: { weight: 2 },
    tipWeight: { weight: 5, place: 35 },
    buttWeight: { weight: 8, place: 1 },
    tape: [
      { weight: 2, place: 5 },
      { weight: 3, place: 36 },
    ],
  };

  // By hand: half an inch off the butt brings all that lies beyond the grip half an inch nearer.
  test("moves what lies beyond the grip and leaves what sits at the butt", () => {
    expect(withLength(parts, 36.5)).toMatchObject({
      length: 36.5,
      head: { weight: 268, place: 36 },
      trims: { tip: 1, butt: undefined, cutLength: 36.5 },
      ferrule: { weight: 2 },
      tipWeight: { place: 34.5 },
      buttWeight: { place: 1 },
      tape: [{ place: 5 }, { place: 35.5 }],
    });
  });

  test("leaves tape that lies under the grip, however long it is, and moves what lies beyond it", () => {
    const under = (length: number, place: number) =>
      withLength({ ...parts, grip: { weight: 50, length }, tape: [{ weight: 2, place }] }, 36).tape![0]!
        .place;
    expect(under(12, 11)).toBe(11);
    expect(under(12, 12)).toBe(12);
    expect(under(10, 10.5)).toBe(9.5);
    // The usual grip is 27 cm, 10.63 in.
    const usual = { ...parts, grip: { weight: 50 } };
    expect(withLength({ ...usual, tape: [{ weight: 2, place: 10.6 }] }, 36).tape![0]!.place).toBe(10.6);
    expect(withLength({ ...usual, tape: [{ weight: 2, place: 10.7 }] }, 36).tape![0]!.place).toBe(9.7);
  });

  test("leaves places that were not given to follow the shaft by themselves", () => {
    expect(withLength(parts, 36.5).ferrule).toEqual({ weight: 2 });
  });
});
