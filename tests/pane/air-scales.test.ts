import fc from "fast-check";
import { expect, test } from "vitest";
import { sessionAir } from "../../src/fitting/session-air.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { airScales } from "../../src/pane/air-scales.ts";
import { UNIT_SETS } from "../../src/shots/unit-set.ts";

const scaleOf = (units: "us" | "metric", key: string) => airScales(units).find((scale) => scale.key === key)!;

test("the air is asked for in the units of the place", () => {
  expect(airScales("us").map(({ unit }) => unit)).toEqual(["°F", "inHg", "%", "ft"]);
  for (const units of ["metric", "metric-kmh"] as const)
    expect(airScales(units).map(({ unit }) => unit)).toEqual(["°C", "hPa", "%", "m"]);
});

test("degrees F, inches of mercury and feet are kept as degrees C, hectopascals and metres", () => {
  // NIST SP 811 (2008), appendix B: degrees C are (F - 32)/1.8, an inch of mercury is 3.386389 kPa, a foot 0.3048 m.
  expect(scaleOf("us", "temperature").kept(68)).toBeCloseTo(20, 10);
  expect(scaleOf("us", "temperature").kept(-40)).toBeCloseTo(-40, 10);
  expect(scaleOf("us", "pressure").kept(29.92)).toBeCloseTo(29.92 * 33.86389, 3);
  expect(scaleOf("us", "altitude").kept(5280)).toBeCloseTo(1609.344, 9);
});

test("what is shown is what was typed, in every set of units", () => {
  for (const scale of UNIT_SETS.flatMap(airScales)) {
    const within = fc.double({ min: scale.shown(scale.least), max: scale.shown(scale.most), noNaN: true });
    fc.assert(fc.property(within, (typed) => Math.abs(scale.shown(scale.kept(typed)) - typed) < 1e-8));
  }
});

test("the air of a session takes whatever lies within the bounds", () => {
  for (const { key, least, most } of airScales("metric"))
    for (const figure of [least, most])
      expect(isProblem(sessionAir({ [key]: figure })), `${key} ${figure}`).toBe(false);
});
