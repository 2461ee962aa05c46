import { expect, test } from "vitest";
import { BALL, RADIANS_A_SECOND_PER_RPM } from "../../../src/flight/ball/ball.ts";
import { BEARMAN_HARVEY } from "../../../src/flight/ball/bearman-harvey.ts";
import { BEARMAN_HARVEY_TABLE } from "../../../src/flight/ball/bearman-harvey-table.ts";
import type { CoefficientModel } from "../../../src/flight/ball/coefficient-model.ts";
import { EXTENDED_BEARMAN_HARVEY } from "../../../src/flight/ball/extended-bearman-harvey.ts";

function at(model: CoefficientModel, speed: number, spin: number): { drag: number; lift: number } {
  const point = Float64Array.of(speed, spin, 0, 0, 0);
  model.coefficients(point);
  return { drag: point[3]!, lift: point[4]! };
}

test("both forms of the wind-tunnel table go through its figures", () => {
  // Source: Bearman and Harvey, Aeronautical Quarterly 27 (1976), as transcribed.
  const figures = [
    [13.7, 2000, 0.3624, 0.104],
    [55.2, 3000, 0.2578, 0.1856],
    [29.9, 4800, 0.3687, 0.3468],
    [88.1, 6000, 0.274, 0.2],
  ] as const;
  for (const model of [BEARMAN_HARVEY, EXTENDED_BEARMAN_HARVEY]) {
    for (const [speed, spin, drag, lift] of figures) {
      expect(at(model, speed, spin).drag).toBeCloseTo(drag, 12);
      expect(at(model, speed, spin).lift).toBeCloseTo(lift, 12);
    }
  }
});

test("the plain table is bilinear inside and holds its edges outside", () => {
  const between = (0.2578 + 0.256 + 0.2602 + 0.2579) / 4;
  expect(at(BEARMAN_HARVEY, (55.2 + 63.1) / 2, 3100).drag).toBeCloseTo(between, 12);
  expect(at(BEARMAN_HARVEY, 5, 9000)).toEqual(at(BEARMAN_HARVEY, 13.7, 6000));
});

test("the smooth table stays within 0.01 of straight lines between the figures", () => {
  const { speed, spin } = BEARMAN_HARVEY_TABLE;
  for (const v of speed.slice(1, -1)) {
    for (const w of spin.slice(1, -1)) {
      const [smooth, plain] = [at(EXTENDED_BEARMAN_HARVEY, v + 4, w + 90), at(BEARMAN_HARVEY, v + 4, w + 90)];
      expect(Math.abs(smooth.drag - plain.drag)).toBeLessThan(0.01);
      expect(Math.abs(smooth.lift - plain.lift)).toBeLessThan(0.01);
    }
  }
});

test("along its rows and columns the smooth table is the cubic spline with the slopes of what lies beyond", () => {
  // Source: scipy 1.17.1, CubicSpline over the figures of a row (slopes of 0 at both ends) or of a column.
  const splines = [
    [21.8, 3000, 0.36412018930916074, 0.33540400990444197],
    [47.5, 3000, 0.2647505534724604, 0.20533962994607696],
    [63.9, 4000, 0.26561575712884783, 0.1959795605752863],
    [71.95, 4800, 0.26937554354950266, 0.19850346893592413],
    [80.15, 5000, 0.2673100892579011, 0.18958551250741104],
    [30.5, 2000, 0.2760173821815621, 0.24524918165546386],
    [55.9, 6000, 0.30566729688694905, 0.26437217393849227],
    [46.9, 3100, 0.2673980695767568, 0.2103998150883689],
    [71.9, 2150, 0.24806471143170303, 0.13945225349179532],
    [29.9, 5930, 0.38705818513492285, 0.3704265374610285],
  ] as const;
  for (const [speed, spin, drag, lift] of splines) {
    expect(at(EXTENDED_BEARMAN_HARVEY, speed, spin).drag).toBeCloseTo(drag, 9);
    expect(at(EXTENDED_BEARMAN_HARVEY, speed, spin).lift).toBeCloseTo(lift, 9);
  }
});

test("the smooth table holds its edges beyond the speeds it has", () => {
  for (const spin of [1000, 3100, 6000]) {
    expect(at(EXTENDED_BEARMAN_HARVEY, 5, spin)).toEqual(at(EXTENDED_BEARMAN_HARVEY, 13.7, spin));
    expect(at(EXTENDED_BEARMAN_HARVEY, 110, spin)).toEqual(at(EXTENDED_BEARMAN_HARVEY, 88.1, spin));
  }
});

test("the extensions meet the table in value and slope at 2,000 and at 6,000 rpm", () => {
  for (const speed of [21.6, 38.4, 55.2, 71.9]) {
    for (const spin of [2000, 6000]) {
      for (const key of ["drag", "lift"] as const) {
        const [below, on, above] = [spin - 0.01, spin, spin + 0.01].map(
          (rpm) => at(EXTENDED_BEARMAN_HARVEY, speed, rpm)[key],
        );
        expect(Math.abs(above! - 2 * on! + below!)).toBeLessThan(1e-9);
      }
    }
  }
});

test("above 6,000 rpm coefficients go by spin ratio", () => {
  const wedge = at(EXTENDED_BEARMAN_HARVEY, 45, 10_000);
  expect(wedge.drag).toBeCloseTo(at(EXTENDED_BEARMAN_HARVEY, 27, 6000).drag, 12);
  expect(wedge.lift).toBeCloseTo(at(EXTENDED_BEARMAN_HARVEY, 27, 6000).lift, 12);
});

test("below 2,000 rpm lift falls to none as a second transcription of the curves does, within 0.02", () => {
  // Source: a second, independent digitisation of Bearman and Harvey's lift against spin ratio.
  const digitised = [
    [0.02011, 0.08086],
    [0.02836, 0.09074],
    [0.04333, 0.10617],
    [0.05235, 0.11358],
    [0.06181, 0.12037],
  ] as const;
  const speed = 71.9;
  for (const [ratio, lift] of digitised) {
    const spin = (ratio * speed) / (BALL.radius * RADIANS_A_SECOND_PER_RPM);
    expect(spin).toBeLessThan(2000);
    expect(Math.abs(at(EXTENDED_BEARMAN_HARVEY, speed, spin).lift - lift)).toBeLessThan(0.02);
  }
  expect(at(EXTENDED_BEARMAN_HARVEY, speed, 0).lift).toBe(0);
});
