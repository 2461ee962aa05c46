import { round } from "./round.ts";

/** The path of straight lines through points, as an SVG `d`. Empty for no points. */
export function pathThrough(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${round(x)},${round(y)}`).join("");
}
