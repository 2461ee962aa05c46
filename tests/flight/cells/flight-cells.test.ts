import { describe, expect, test } from "vitest";
import { airDensityAt, airDensityOf } from "../../../src/flight/cells/air-cells.ts";
import { flightRow, normalizedCarry } from "../../../src/flight/cells/flight-cells.ts";
import { spinAxisOf, spinLoftOf } from "../../../src/flight/cells/impact-cells.ts";
import { figure } from "../expect-figure.ts";

describe("air density", () => {
  test("takes degrees F and inches of mercury, or degrees C and hectopascals", () => {
    // Source: CIPM-2007 at the conditions of the rules' distance test, 75 degrees F, 30.00 inHg, 50 %.
    expect(Math.abs(figure(airDensityOf(75, 30, 50)) - 1.18531)).toBeLessThan(1e-4);
    // Source: CIPM-2007 at 20 degrees C, 1000 hPa, 50 %.
    expect(Math.abs(figure(airDensityOf(20, 1000, 50, "SI")) - 1.1835566)).toBeLessThan(1e-4);
    expect(figure(airDensityOf(68, 1000, 50, "us"))).toBeCloseTo(
      figure(airDensityOf(20, 1000, 50, "si")),
      12,
    );
  });

  test("names the argument that is wrong in the units of the asker", () => {
    expect(airDensityOf(75, 100, 50)).toMatchObject({
      message: "pressure should be 400 to 1100 hPa, or 12 to 32.4 inHg, not 100",
    });
    expect(airDensityOf(200, 30, 50)).toMatchObject({
      message: "temperature should be -40 to 140 degrees F, not 200",
    });
    expect(airDensityOf(70, 1000, 50, "si")).toMatchObject({
      message: "temperature should be -40 to 60 degrees C, not 70",
    });
    expect(airDensityOf(20, 40, 50, "si")).toMatchObject({
      message: "pressure should be 400 to 1100 hPa, or 12 to 32.4 inHg, not 40",
    });
    expect(airDensityOf(75, 30, 50, "metric")).toMatchObject({
      message: 'units should be "us" or "si", not "metric"',
    });
  });

  test("at an altitude is that of the standard atmosphere, in feet or metres", () => {
    // Source: ICAO Doc 7488: 1.11166 kg/m3 at 1,000 m; US Standard Atmosphere 1976: 1.04666 at 5,280 ft.
    expect(Math.abs(figure(airDensityAt(1000, undefined, undefined, "si")) - 1.11166)).toBeLessThan(1e-5);
    expect(Math.abs(figure(airDensityAt(5280)) - 1.04666)).toBeLessThan(1e-5);
    expect(airDensityAt(99_999)).toMatchObject({
      message: "altitude should be -1500 to 19500 ft, not 99999",
    });
    expect(airDensityAt(6000, undefined, undefined, "si")).toMatchObject({
      message: "altitude should be -457 to 5943 m, not 6000",
    });
    expect(airDensityAt(0, undefined, undefined, "metric")).toMatchObject({
      message: 'units should be "us" or "si", not "metric"',
    });
  });

  test("at an altitude takes a warm or damp day in the units of the asker", () => {
    // Source: CIPM-2007 in the standard pressure of 5,000 ft, evaluated independently in Python.
    expect(figure(airDensityAt(5000, 86))).toBeCloseTo(0.9691003825723015, 9);
    expect(figure(airDensityAt(5000, undefined, 30))).toBeCloseTo(1.0548147954038554, 9);
    expect(figure(airDensityAt(5000, 86, 30))).toBeCloseTo(0.9635720588018596, 9);
    expect(figure(airDensityAt(1524, 30, 30, "si"))).toBeCloseTo(0.9635720588018596, 9);
    expect(airDensityAt(5000, 150)).toMatchObject({
      message: "temperature should be -40 to 140 degrees F, not 150",
    });
    expect(airDensityAt(5000, undefined, 101)).toMatchObject({
      message: "humidity should be 0 to 100 %, not 101",
    });
  });
});

describe("flight", () => {
  test("answers the same flight in both unit systems", () => {
    const us = figure(flightRow(120, 16, 7000, 5, -2, 1.2));
    const si = figure(flightRow(120 * 0.44704, 16, 7000, 5, -2, 1.2, "si"));
    expect(us[0] * 0.9144).toBeCloseTo(si[0], 9);
    expect(us[1] * 0.9144).toBeCloseTo(si[1], 9);
    expect(us[2] * 0.3048).toBeCloseTo(si[2], 9);
    expect(us.slice(3, 5)).toEqual([expect.closeTo(si[3], 9), expect.closeTo(si[4], 9)]);
    expect(us[5] * 0.44704).toBeCloseTo(si[5], 9);
  });

  test("takes axis and direction as 0 and sea-level air when they are left out", () => {
    expect(flightRow(120, 16, 7000)).toEqual(flightRow(120, 16, 7000, 0, 0, 1.225, "us"));
    expect(figure(flightRow(120, 16, 7000))[1]).toBe(0);
  });

  test("names the argument that is wrong", () => {
    expect(flightRow(500, 16, 7000)).toMatchObject({ message: "ball speed should be 3 to 265 mph, not 500" });
    expect(flightRow(120, 95, 7000)).toMatchObject({
      message: "launch angle should be -30 to 89 degrees, not 95",
    });
    expect(flightRow(Number.NaN, 16, 7000)).toMatchObject({ kind: "invalid" });
    expect(flightRow(150, 16, 7000, 0, 0, 1.225, "si")).toMatchObject({
      message: "ball speed should be 1 to 120 m/s, not 150",
    });
    expect(flightRow(120, 16, 7000, 0, 0, 1.225, "metric")).toMatchObject({
      message: 'units should be "us" or "si", not "metric"',
    });
  });
});

test("a carry normalises the same in yards and in metres", () => {
  const yards = figure(normalizedCarry(160, 115, 17, 6500, 1.04));
  expect(yards).toBeLessThan(157);
  expect(figure(normalizedCarry(160 * 0.9144, 115 * 0.44704, 17, 6500, 1.04, 1.225, "si"))).toBeCloseTo(
    yards * 0.9144,
    9,
  );
  expect(normalizedCarry(160, 115, 17, 6500, 1.04, 0)).toMatchObject({ kind: "invalid" });
  expect(normalizedCarry(700, 115, 17, 6500, 1.04)).toMatchObject({
    message: "carry should be 0 to 600 yd, not 700",
  });
  expect(normalizedCarry(160, 300, 17, 6500, 1.04)).toMatchObject({
    message: "ball speed should be 3 to 265 mph, not 300",
  });
  expect(normalizedCarry(160, 115, 17, 6500, 1.04, 1.225, "metric")).toMatchObject({
    message: 'units should be "us" or "si", not "metric"',
  });
});

test("spin loft and axis take face and path", () => {
  // Source: vector geometry evaluated independently.
  expect(figure(spinLoftOf(12, 3, 2, -2))).toBeCloseTo(9.833273018887166, 9);
  expect(figure(spinLoftOf(12, -1))).toBeCloseTo(13, 9);
  expect(figure(spinAxisOf(12, 3, 2, -2))).toBeCloseTo(23.514475273873366, 9);
});
