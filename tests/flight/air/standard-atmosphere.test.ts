import { expect, test } from "vitest";
import { airAt } from "../../../src/flight/air/air-at.ts";
import { standardAtmosphere } from "../../../src/flight/air/standard-atmosphere.ts";
import { viscosity } from "../../../src/flight/air/viscosity.ts";
import { figure } from "../expect-figure.ts";

// Source: Manual of the ICAO Standard Atmosphere, Doc 7488 (the tables of ISO 2533): m, K, Pa, kg/m3, Pa s.
const PUBLISHED = [
  [0, 288.15, 101325, 1.225, 1.7894e-5],
  [1000, 281.651, 89876.3, 1.11166, 1.7579e-5],
  [2000, 275.154, 79501.4, 1.00655, 1.726e-5],
] as const;

test("the standard atmosphere meets the published tables", () => {
  for (const [altitude, kelvin, pressure, density] of PUBLISHED) {
    const air = figure(standardAtmosphere(altitude));
    expect(air.temperature + 273.15).toBeCloseTo(kelvin, 2);
    expect(Math.abs(air.pressure - pressure)).toBeLessThan(0.1);
    expect(Math.abs(air.density - density)).toBeLessThan(1e-5);
  }
});

test("viscosity meets the published tables", () => {
  for (const [, kelvin, , , published] of PUBLISHED) {
    expect(Math.abs(viscosity(kelvin - 273.15) - published)).toBeLessThan(1e-9);
  }
});

test("air at an altitude is the standard atmosphere when nothing else is given", () => {
  expect(Math.abs(figure(airAt(1609.344)).density - 1.04666)).toBeLessThan(1e-4);
});

test("air at an altitude takes a warmer day or damp into account", () => {
  // Source: CIPM-2007 at 30 degrees C and 30 % in the standard pressure of 1,500 m (845.6 hPa).
  expect(Math.abs(figure(airAt(1500, 30, 0.3)).density - 0.96639)).toBeLessThan(1e-4);
  expect(figure(airAt(0, 25, 1)).density).toBeLessThan(figure(airAt(0, 25, 0)).density);
});

test("air at an altitude takes dry air or the standard temperature where only the other is given", () => {
  // Source: CIPM-2007 in the standard pressure of 1,500 m, and Sutherland's formula, evaluated independently in Python.
  const warm = figure(airAt(1500, 30));
  expect(warm.density).toBeCloseTo(0.9719587388558129, 9);
  expect(warm.viscosity).toBeCloseTo(1.8608692424914876e-5, 12);
  expect(figure(airAt(1500, undefined, 0.5)).density).toBeCloseTo(1.0564840913309745, 9);
});

test("the standard atmosphere refuses an altitude above its lowest layer", () => {
  expect(standardAtmosphere(12_000)).toMatchObject({ kind: "invalid" });
  expect(airAt(Number.POSITIVE_INFINITY)).toMatchObject({ kind: "invalid" });
  expect(airAt(7001)).toMatchObject({ message: "altitude should be -500 to 7000 m, not 7001" });
});
