import { describe, expect, test } from "vitest";
import { runAfterLanding } from "../../../src/flight/uses/run-after-landing.ts";
import { figure } from "../expect-figure.ts";

// Source: the model of the doc comment, written anew from its description in Python with vectors of the tipped turf.
const RUNS = [
  ["a drive", 27, 35, 2000, 29.146729975942858],
  ["a low drive whose ball slides over the turf at first", 27, 10, 6000, 29.30976708465194],
  ["a skulled ball that spins fast and slides", 30, 3, 9000, 17.67331624365851],
  ["a mid iron that hits the turf at more than 20 m/s", 22, 50, 7000, 1.9176963854677398],
  ["a wedge that spins back", 25, 48, 11000, -1.2261667946548185],
  ["a ball out of the sky", 40, 85, 3000, -3.285681140945151],
  ["a ball that spins on its spot, past its fiftieth bounce", 2, 87, 20_000, -63.72156600509729],
] as const;

describe.each(RUNS)("%s", (_name, speed, angle, spin, run) => {
  test("runs as far as bounces and roll worked out independently", () => {
    expect(figure(runAfterLanding(speed, angle, spin))).toBeCloseTo(run, 9);
  });
});

test("a ball that drops without spin stays where it is", () => {
  expect(figure(runAfterLanding(5, 90, 0))).toBeCloseTo(0, 9);
});

test("a run names the figure that no landing has", () => {
  expect(runAfterLanding(-1, 40, 3000)).toMatchObject({
    message: "landing speed should be 0 to 120 m/s, not -1",
  });
  expect(runAfterLanding(25, 95, 3000)).toMatchObject({
    message: "landing angle should be 0 to 90 degrees, not 95",
  });
  expect(runAfterLanding(25, 40, -1)).toMatchObject({
    message: "landing spin should be 0 to 20000 rpm, not -1",
  });
});
