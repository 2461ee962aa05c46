import { expect, test } from "vitest";
import { airDensity } from "../../../src/flight/air/air-density.ts";
import { figure } from "../expect-figure.ts";

test("air density meets published figures within 1e-4 kg/m3", () => {
  // Source: S. V. Gupta, Mass Metrology, table on page 205.
  const published = [
    { temperature: 10, pressure: 97325.34281295001, humidity: 0.4, density: 1.19569 },
    { temperature: 40, pressure: 101325.01443540001, humidity: 0.4, density: 1.11497 },
  ];
  for (const { density, ...reading } of published) {
    expect(Math.abs(figure(airDensity(reading)) - density)).toBeLessThan(1e-4);
  }
});

test("air density follows CIPM-2007 from freezing dry to hot and humid", () => {
  // Source: Picard et al., Metrologia 45 (2008) 149, evaluated independently in Python.
  const computed = [
    [15, 101325, 0, 1.225521344728071],
    [20, 101325, 0.5, 1.1993138954744933],
    [20, 100000, 0.5, 1.1835566086974285],
    [25, 101325, 0.5, 1.1773153736529725],
    [0, 101325, 0, 1.2930486983866063],
    [30, 84556, 0.3, 0.9663882835124931],
    [35, 101325, 0.8, 1.126604541251533],
  ] as const;
  for (const [temperature, pressure, humidity, density] of computed) {
    expect(figure(airDensity({ temperature, pressure, humidity }))).toBeCloseTo(density, 12);
  }
});

test("air density refuses humidity in percent and says what would do", () => {
  expect(airDensity({ temperature: 20, pressure: 101325, humidity: 50 })).toEqual({
    kind: "invalid",
    message: "humidity should be 0 to 1, not 50",
  });
  expect(airDensity({ temperature: 20, pressure: Number.NaN, humidity: 0.5 })).toMatchObject({
    kind: "invalid",
  });
});
