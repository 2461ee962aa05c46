import fc from "fast-check";
import { expect, test } from "vitest";
import { airOfDensity } from "../../../src/flight/air/air.ts";
import { SMITS_SMITH } from "../../../src/flight/ball/smits-smith.ts";
import { calibrate } from "../../../src/flight/calibration/calibrate.ts";
import { fitTwo } from "../../../src/flight/calibration/fit-two.ts";
import { type FlightOptions, flyBall } from "../../../src/flight/trajectory/fly-ball.ts";
import { figure } from "../expect-figure.ts";

const AIR = airOfDensity(1.18);

/** A session of an iron at Harrow Lane, its flights computed by the given truth with a repeatable scatter. */
function session(truth: FlightOptions, size = 12, scatter = 0) {
  return Array.from({ length: size }, (_, i) => {
    const strike = {
      speed: 49 + Math.sin(i * 5),
      launch: 18 + Math.cos(i * 2),
      spin: 6400 + 400 * Math.sin(i * 3),
    };
    const { carry, height, landingAngle } = figure(flyBall(strike, AIR, truth));
    const off = (phase: number) => scatter * Math.SQRT2 * Math.sin(i * 12.9898 + phase);
    return {
      strike,
      carry: carry + 2 * off(0),
      height: height + off(2),
      landingAngle: landingAngle + off(4),
    };
  });
}

test("a calibration finds the factors the flights were made with", () => {
  const factors = fc.record({
    drag: fc.double({ min: 0.7, max: 1.3, noNaN: true }),
    lift: fc.double({ min: 0.7, max: 1.3, noNaN: true }),
  });
  fc.assert(
    fc.property(factors, (truth) => {
      const found = figure(calibrate(session({ factors: truth }), AIR));
      expect(found.drag.value).toBeCloseTo(truth.drag, 4);
      expect(found.lift.value).toBeCloseTo(truth.lift, 4);
    }),
    { numRuns: 20 },
  );
});

test("the limits of a calibration hold the true factors when the figures scatter", () => {
  const truth = { drag: 0.93, lift: 1.08 };
  const found = figure(calibrate(session({ factors: truth }, 30, 0.7), AIR));
  expect(found.residual).toBeGreaterThan(0.4);
  expect(found.residual).toBeLessThan(1);
  for (const key of ["drag", "lift"] as const) {
    expect(found[key].low).toBeLessThan(truth[key]);
    expect(found[key].high).toBeGreaterThan(truth[key]);
    expect(found[key].high - found[key].low).toBeLessThan(0.1);
  }
});

test("a calibrated model meets flights that another published model made", () => {
  const shots = session({ model: SMITS_SMITH });
  const { factors } = figure(calibrate(shots, AIR));
  const raw = Math.abs(figure(flyBall(shots[0]!.strike, AIR)).carry - shots[0]!.carry);
  const calibrated = Math.abs(figure(flyBall(shots[0]!.strike, AIR, { factors })).carry - shots[0]!.carry);
  expect(calibrated).toBeLessThan(raw / 3);
});

test("figures that are missing are left out, and a session without heights or angles says what it lacks", () => {
  const shots = session({ factors: { drag: 0.9, lift: 1.1 } });
  const partly = shots.map((shot, i) =>
    i % 2 ? { ...shot, height: Number.NaN } : { strike: shot.strike, carry: shot.carry },
  );
  expect(figure(calibrate(partly, AIR)).figures).toBe(18);
  const carries = shots.map(({ strike, carry }) => ({ strike, carry }));
  expect(calibrate(carries, AIR)).toEqual({
    kind: "unavailable",
    message: "a calibration needs heights or landing angles: carry alone does not tell drag from lift",
  });
  expect(calibrate(shots.slice(0, 2), AIR)).toMatchObject({ kind: "unavailable" });
  expect(calibrate([], AIR)).toMatchObject({ kind: "unavailable" });
});

test("least squares in two unknowns meets the certified fit of NIST's Misra1a", () => {
  // Source: NIST Statistical Reference Datasets, Misra1a, y = b1 (1 - exp(-b2 x)); certified values and errors.
  const y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78];
  const x = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0];
  const fit = fitTwo(
    (b1, b2) => Float64Array.from(x, (value, i) => b1 * 250 * (1 - Math.exp(-b2 * 5e-4 * value)) - y[i]!),
    1,
    1,
  )!;
  expect(fit.first * 250).toBeCloseTo(238.94212918, 3);
  expect(fit.second * 5e-4).toBeCloseTo(5.5015643181e-4, 8);
  expect(fit.squares).toBeCloseTo(0.12455138894, 8);
  const error = Math.sqrt((fit.squares / 12) * fit.inverse[0]) * 250;
  expect(error).toBeCloseTo(2.7070075241, 3);
});
