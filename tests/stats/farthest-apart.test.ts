import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { farthestApart } from "../../src/stats/farthest-apart.ts";
import { QUICK } from "../quick.ts";

type Point = readonly [number, number];

/** The definition itself: the largest of all distances of two points. */
function byAllPairs(points: readonly Point[]): number {
  return Math.max(0, ...points.flatMap((a) => points.map((b) => Math.hypot(a[0] - b[0], a[1] - b[1]))));
}

const place = fc.oneof(fc.integer({ min: -5, max: 5 }), fc.double({ min: -300, max: 300, noNaN: true }));

describe("the two points farthest apart", () => {
  test("of a 3-4-5 triangle are the ends of its long side", () => {
    expect(
      farthestApart([
        [0, 0],
        [3, 0],
        [0, 4],
      ]),
    ).toBe(5);
  });

  test("are those that trying all pairs finds, points in a line and equal points included", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place), { minLength: 1, maxLength: 40 }), (points) => {
        expect(farthestApart(points)).toBeCloseTo(byAllPairs(points), 9);
      }),
    );
  });

  test.skipIf(QUICK)(
    "of a hundred thousand points are found without trying all pairs",
    { timeout: 5_000 },
    () => {
      const points = Array.from(
        { length: 100_000 },
        (_, i): Point => [Math.sin(i) * (i % 977), Math.cos(3 * i) * 9],
      );
      expect(farthestApart([...points, [-2000, 0], [2000, 0]])).toBe(4000);
    },
  );
});
