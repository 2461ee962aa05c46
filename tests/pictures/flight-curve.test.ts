import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { flightCurve } from "../../src/pictures/flight-curve.ts";

const flight = { launch: 17, height: 30, landingAngle: 46, carry: 165 };
const degrees = (rise: number, run: number) => (Math.atan2(rise, run) * 180) / Math.PI;

describe("the curve of a flight", () => {
  test("starts and lands at the measured angles, peaks at the measured height and carries as far", () => {
    const points = flightCurve(flight, 4000);
    const [first, second] = points as [(typeof points)[0], (typeof points)[0]];
    const [before, last] = points.slice(-2) as [(typeof points)[0], (typeof points)[0]];
    expect(degrees(second.height - first.height, second.ahead - first.ahead)).toBeCloseTo(17, 1);
    expect(degrees(before.height - last.height, last.ahead - before.ahead)).toBeCloseTo(46, 1);
    expect(Math.max(...points.map(({ height }) => height))).toBeCloseTo(30, 9);
    expect(last.ahead).toBeCloseTo(165, 9);
    expect(last.height).toBeCloseTo(0, 9);
  });

  test("never runs back, whatever the figures", () => {
    const angle = fc.double({ min: -90, max: 90, noNaN: true });
    const length = fc.double({ min: -10, max: 400, noNaN: true });
    const any = fc.record({ launch: angle, height: length, landingAngle: angle, carry: length });
    fc.assert(
      fc.property(any, (drawn) => {
        const points = flightCurve(drawn);
        return points.every(({ ahead }, i) => i === 0 || ahead >= points[i - 1]!.ahead - 1e-9);
      }),
    );
  });

  test("is empty where figures are missing or do not make a flight", () => {
    expect(flightCurve({ ...flight, height: Number.NaN })).toEqual([]);
    expect(flightCurve({ ...flight, launch: 2, height: 60 })).toEqual([]);
    expect(flightCurve({ ...flight, launch: -3 })).toEqual([]);
  });
});
