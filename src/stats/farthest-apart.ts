import { convexHull, type Point } from "./convex-hull.ts";

/**
 * The distance of the two points that lie farthest apart. These two are corners of the hull around all points
 * (Shamos 1978, Computational Geometry), which has few corners however many points there are; so a hundred thousand
 * shots take no longer than sorting them.
 */
export function farthestApart(points: readonly Point[]): number {
  const corners = convexHull(points);
  let farthest = 0;
  for (const [x, y] of corners) {
    for (const [otherX, otherY] of corners) farthest = Math.max(farthest, Math.hypot(x - otherX, y - otherY));
  }
  return farthest;
}
