import fc from "fast-check";
import { expect, test } from "vitest";
import { airOfDensity } from "../../../src/flight/air/air.ts";
import type { CoefficientModel } from "../../../src/flight/ball/coefficient-model.ts";
import { constantCoefficients } from "../../../src/flight/ball/constant-coefficients.ts";
import { EXTENDED_BEARMAN_HARVEY } from "../../../src/flight/ball/extended-bearman-harvey.ts";
import { flightPath } from "../../../src/flight/trajectory/flight-path.ts";
import { flyBall, TOLERANCE } from "../../../src/flight/trajectory/fly-ball.ts";
import { isProblem } from "../../../src/outcome/problem.ts";
import { figure } from "../expect-figure.ts";

const AIR = airOfDensity(1.225);
const MPH = 0.44704;
const YARD = 0.9144;

/** The whole working range: 40 to 190 mph, 0 to 60 degrees, 0 to 12,000 rpm, any axis, wind and air. */
const strikes = fc.record({
  speed: fc.double({ min: 40 * MPH, max: 190 * MPH, noNaN: true }),
  launch: fc.double({ min: 0, max: 60, noNaN: true }),
  spin: fc.double({ min: 0, max: 12_000, noNaN: true }),
  axis: fc.double({ min: -60, max: 60, noNaN: true }),
  direction: fc.double({ min: -20, max: 20, noNaN: true }),
});
const airs = fc.double({ min: 0.8, max: 1.35, noNaN: true }).map((density) => airOfDensity(density));
const winds = fc.record({
  along: fc.double({ min: -15, max: 15, noNaN: true }),
  across: fc.double({ min: -15, max: 15, noNaN: true }),
});

test("halving the tolerance moves no carry of the working range by 0.02 yd", () => {
  let worst = 0;
  for (let mph = 40; mph <= 190; mph += 15) {
    for (let launch = 0; launch <= 60; launch += 6) {
      for (let spin = 0; spin <= 12_000; spin += 750) {
        const strike = { speed: mph * MPH, launch, spin, axis: (launch % 21) - 10 };
        const coarse = figure(flyBall(strike, AIR)).carry;
        const fine = figure(flyBall(strike, AIR, { tolerance: TOLERANCE / 2 })).carry;
        worst = Math.max(worst, Math.abs(coarse - fine) / YARD);
      }
    }
  }
  expect(worst).toBeLessThan(0.02);
});

test("every flight of the working range comes down with finite figures, in any wind", () => {
  fc.assert(
    fc.property(strikes, airs, winds, (strike, air, wind) => {
      const flight = figure(flyBall(strike, air, { wind }));
      const { outside, ...figures } = flight;
      expect(typeof outside).toBe("boolean");
      for (const value of Object.values(figures)) expect(Number.isFinite(value)).toBe(true);
      expect(flight.height).toBeGreaterThanOrEqual(0);
      expect(flight.landingAngle).toBeGreaterThanOrEqual(0);
      expect(flight.landingAngle).toBeLessThanOrEqual(90);
    }),
    { numRuns: 1000 },
  );
});

test("left and right are mirror images", () => {
  fc.assert(
    fc.property(strikes, airs, winds, (strike, air, wind) => {
      const right = figure(flyBall(strike, air, { wind }));
      const mirrored = { ...strike, axis: -strike.axis, direction: -strike.direction };
      const left = figure(flyBall(mirrored, air, { wind: { along: wind.along, across: -wind.across } }));
      expect(left.carry).toBeCloseTo(right.carry, 9);
      expect(left.offline).toBeCloseTo(-right.offline, 9);
      expect(left.landingAngle).toBeCloseTo(right.landingAngle, 9);
    }),
    { numRuns: 300 },
  );
});

test("denser air never carries a ball without lift farther", () => {
  const noLift: CoefficientModel = {
    ...EXTENDED_BEARMAN_HARVEY,
    coefficients(point) {
      EXTENDED_BEARMAN_HARVEY.coefficients(point);
      point[4] = 0;
    },
  };
  const denser = fc.double({ min: 1.005, max: 1.45, noNaN: true });
  for (const model of [noLift, constantCoefficients(0.25, 0)]) {
    fc.assert(
      fc.property(strikes, airs, denser, (strike, air, by) => {
        const thin = figure(flyBall({ ...strike, direction: 0 }, air, { model })).carry;
        const thick = figure(
          flyBall({ ...strike, direction: 0 }, airOfDensity(air.density * by), { model }),
        ).carry;
        expect(thick).toBeLessThanOrEqual(thin + 1e-6);
      }),
      { numRuns: 300 },
    );
  }
});

test("anything at all gives a flight or a problem, never a throw and never NaN", () => {
  const any = fc.oneof(fc.double(), fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, 0, -1, 1e9));
  fc.assert(
    fc.property(any, any, any, any, any, (speed, launch, spin, density, ground) => {
      const flight = flyBall({ speed, launch, spin }, { density, viscosity: 1.8e-5 }, { ground });
      if (!isProblem(flight)) expect(Number.isFinite(flight.carry)).toBe(true);
    }),
    { numRuns: 2000 },
  );
});

test("a shot is flagged where it leaves what the wind tunnel measured", () => {
  expect(figure(flyBall({ speed: 65, launch: 13, spin: 3800 }, AIR)).outside).toBe(false);
  expect(figure(flyBall({ speed: 45, launch: 25, spin: 9500 }, AIR)).outsideShare).toBe(1);
  const drive = figure(flyBall({ speed: 75, launch: 12, spin: 2200 }, AIR));
  expect(drive.outside).toBe(true);
  expect(drive.outsideShare).toBeLessThan(1);
});

test("a ball that cannot get up to the ground says so", () => {
  const low = flyBall({ speed: 40, launch: 5, spin: 2500 }, AIR, { ground: 50 });
  expect(low).toEqual({ kind: "unavailable", message: "the ball never gets up to the height of the ground" });
});

test("a ball struck down on level ground lands where it started", () => {
  expect(figure(flyBall({ speed: 40, launch: -3, spin: 2500 }, AIR)).carry).toBeCloseTo(0, 9);
});

test("the path for drawing starts at the ball, passes the top and ends at the landing", () => {
  const strike = { speed: 55, launch: 17, spin: 6500, axis: -6, direction: 2 };
  const flight = figure(flyBall(strike, AIR));
  const path = figure(flightPath(strike, AIR, {}, 201));
  expect(path).toHaveLength(201);
  expect(path[0]).toEqual({ time: 0, x: 0, y: 0, z: 0 });
  expect(path[200]!.x).toBeCloseTo(flight.carry, 8);
  expect(path[200]!.y).toBeCloseTo(0, 8);
  expect(path[200]!.z).toBeCloseTo(flight.offline, 8);
  expect(Math.max(...path.map((point) => point.y))).toBeCloseTo(flight.height, 2);
});

test("a ball that hardly leaves the ground lands flat where it starts", () => {
  const flat = figure(flyBall({ speed: 21.9, launch: 1.4e-210, spin: 0 }, airOfDensity(0.8)));
  expect(flat.carry).toBeCloseTo(0, 6);
  expect(flat.landingAngle).toBeGreaterThanOrEqual(0);
  expect(flat.landingAngle).toBeCloseTo(0, 6);
});
