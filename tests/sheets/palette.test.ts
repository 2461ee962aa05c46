import { expect, it } from "vitest";
import { BUILD_COLORS, BUILD_MARKERS, buildColor, buildMarker } from "../../src/sheets/palette.ts";

it("colours and markers go round, and together tell 24 builds apart", () => {
  expect([buildColor(0), buildColor(7), buildColor(8)]).toEqual([
    BUILD_COLORS[0],
    BUILD_COLORS[7],
    BUILD_COLORS[0],
  ]);
  expect([buildMarker(5), buildMarker(6)]).toEqual([BUILD_MARKERS[5], BUILD_MARKERS[0]]);
  const looks = Array.from({ length: 24 }, (_, i) => `${buildColor(i)} ${buildMarker(i)}`);
  expect(new Set(looks).size).toBe(24);
});
