import { expect, test } from "vitest";
import { airOfDensity } from "../../../src/flight/air/air.ts";
import { BEARMAN_HARVEY } from "../../../src/flight/ball/bearman-harvey.ts";
import { constantCoefficients } from "../../../src/flight/ball/constant-coefficients.ts";
import { EXTENDED_BEARMAN_HARVEY } from "../../../src/flight/ball/extended-bearman-harvey.ts";
import { SMITS_SMITH } from "../../../src/flight/ball/smits-smith.ts";
import { flyBall } from "../../../src/flight/trajectory/fly-ball.ts";
import { figure } from "../expect-figure.ts";

test("the wind-tunnel table was measured from 13.7 to 88.1 m/s and 2,000 to 6,000 rpm, ends included", () => {
  for (const { measured } of [BEARMAN_HARVEY, EXTENDED_BEARMAN_HARVEY]) {
    for (const [speed, spin] of [
      [13.7, 2000],
      [13.7, 6000],
      [88.1, 2000],
      [88.1, 6000],
      [50, 4000],
    ] as const)
      expect(measured(speed, spin, 0)).toBe(true);
    for (const [speed, spin] of [
      [13.6, 4000],
      [88.2, 4000],
      [50, 1999],
      [50, 6001],
    ] as const)
      expect(measured(speed, spin, 0)).toBe(false);
  }
});

test("the formulas were measured from Reynolds numbers of 70,000 to 210,000 and spin ratios of 0.08 to 0.2", () => {
  // A ratio of 1 at 50 m/s is 50 / 0.021335 m in radians a second, times 30 / pi in rpm.
  const rpm = (ratio: number) => ((ratio * 50) / 0.021335) * (30 / Math.PI);
  const inside = (ratio: number, reynolds: number) => SMITS_SMITH.measured(50, rpm(ratio), reynolds);
  for (const reynolds of [70_000, 140_000, 210_000]) {
    for (const ratio of [0.0801, 0.14, 0.1999]) expect(inside(ratio, reynolds)).toBe(true);
    for (const ratio of [0, 0.0799, 0.2001, 1]) expect(inside(ratio, reynolds)).toBe(false);
  }
  for (const reynolds of [0, 69_999, 210_001]) expect(inside(0.14, reynolds)).toBe(false);
});

test("coefficients that are given for every speed and spin are never outside of what was measured", () => {
  const strike = { speed: 110, launch: 14, spin: 15_000 };
  const flight = figure(flyBall(strike, airOfDensity(1.2), { model: constantCoefficients(0.25, 0.1) }));
  expect(flight).toMatchObject({ outside: false, outsideShare: 0 });
});
