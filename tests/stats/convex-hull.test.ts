import fc from "fast-check";
import { expect, test } from "vitest";
import { convexHull, type Point } from "../../src/stats/convex-hull.ts";

/** Each corner once, in an order that does not hang on where the walk round the hull begins. */
const corners = (points: readonly Point[]) => [...new Set(convexHull(points).map(String))].sort();

test("the hull of a full grid, dealt in any order, is its four corners", () => {
  const grid = Array.from({ length: 35 }, (_, i): Point => [(i % 7) - 3, Math.floor(i / 7) - 2]);
  const dealt = fc.shuffledSubarray(grid, { minLength: grid.length });
  fc.assert(
    fc.property(dealt, (points) => {
      expect(corners(points)).toEqual(["-3,-2", "-3,2", "3,-2", "3,2"]);
    }),
  );
});

test("points in a line have its two ends for a hull, and equal points one", () => {
  const line: Point[] = [
    [4, 2],
    [0, 0],
    [-6, -3],
    [2, 1],
  ];
  expect(corners(line)).toEqual(["-6,-3", "4,2"]);
  expect(
    corners([
      [7, 1],
      [7, 5],
      [7, 3],
    ]),
  ).toEqual(["7,1", "7,5"]);
  expect(
    corners([
      [2, 3],
      [2, 3],
      [2, 3],
    ]),
  ).toEqual(["2,3"]);
  expect(corners([])).toEqual([]);
});

// What makes a hull one: whole coordinates, so that which side of an edge a point lies on is exact.
test("no point lies outside an edge of the hull, and no corner on the way between two others", () => {
  const place = fc.integer({ min: -20, max: 20 });
  fc.assert(
    fc.property(fc.array(fc.tuple(place, place), { minLength: 3, maxLength: 30 }), (points) => {
      const round = convexHull(points).filter(([x, y], i, all) => {
        const [nextX, nextY] = all[(i + 1) % all.length]!;
        return x !== nextX || y !== nextY;
      });
      round.forEach(([ax, ay], i) => {
        const [bx, by] = round[(i + 1) % round.length]!;
        for (const [x, y] of points) {
          const side = (bx - ax) * (y - ay) - (by - ay) * (x - ax);
          expect(side).toBeGreaterThanOrEqual(0);
          const within = (x - ax) * (x - bx) + (y - ay) * (y - by) < 0;
          if (side === 0 && within) expect(round).not.toContainEqual([x, y]);
        }
      });
    }),
  );
});
