import type { TaperedRod } from "./tapered-rod.ts";

/** What is left of a rod between two places of the axis; a rod of no length where nothing is. */
export function cutRod(rod: TaperedRod, from: number, to: number): TaperedRod {
  const slope = (rod.endDensity - rod.startDensity) / (rod.end - rod.start);
  const start = Math.min(Math.max(rod.start, from), rod.end);
  const end = Math.max(start, Math.min(rod.end, to));
  const densityAt = (place: number) => rod.startDensity + slope * (place - rod.start);
  return { start, end, startDensity: densityAt(start), endDensity: densityAt(end) };
}
