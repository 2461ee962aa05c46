import type { Marker } from "./plan.ts";

/** A build's colour, in the order in which builds were first hit; after the eighth they begin again. */
export const BUILD_COLORS: readonly string[] = [
  "#1d5c4a",
  "#c8571b",
  "#2b6cb0",
  "#7b3fa0",
  "#a8861d",
  "#566069",
  "#b3265e",
  "#0f7f8c",
];

/** A build's marker. There are six against eight colours, so that shape and colour together stay unlike for 24. */
export const BUILD_MARKERS: readonly Exclude<Marker, "none">[] = [
  "circle",
  "square",
  "diamond",
  "triangle",
  "x",
  "plus",
];

/** The colour of the build at this place, counted from 0. */
export function buildColor(place: number): string {
  return BUILD_COLORS[place % BUILD_COLORS.length]!;
}

/** The marker of the build at this place, counted from 0. */
export function buildMarker(place: number): Exclude<Marker, "none"> {
  return BUILD_MARKERS[place % BUILD_MARKERS.length]!;
}
