type Point = readonly [number, number];

/**
 * The distance of the two points that lie farthest apart. These two are corners of the hull around all points
 * (Shamos 1978, Computational Geometry), which has few corners however many points there are; so a hundred thousand
 * shots take no longer than sorting them.
 */
export function farthestApart(points: readonly Point[]): number {
  const corners = hull(points);
  let farthest = 0;
  for (const [x, y] of corners) {
    for (const [otherX, otherY] of corners) farthest = Math.max(farthest, Math.hypot(x - otherX, y - otherY));
  }
  return farthest;
}

/** Corners of the convex hull: the lower and the upper chain over the points sorted by x (Andrew 1979). */
function hull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  if (sorted.length < 3) return sorted;
  return [...chain(sorted), ...chain(sorted.reverse())];
}

function chain(points: readonly Point[]): Point[] {
  const corners: Point[] = [];
  for (const point of points) {
    while (corners.length >= 2 && turn(corners.at(-2)!, corners.at(-1)!, point) <= 0) corners.pop();
    corners.push(point);
  }
  return corners;
}

/** Above 0 for a turn to the left on the way from the first over the second to the third. */
function turn([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
}
