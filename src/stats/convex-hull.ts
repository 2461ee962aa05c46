export type Point = readonly [number, number];

/**
 * Corners of the convex hull of points: the lower and then the upper chain over the points sorted by x, either with
 * both its ends (Andrew 1979, Information Processing Letters 9, 216-219). Points within an edge are no corners.
 */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
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
