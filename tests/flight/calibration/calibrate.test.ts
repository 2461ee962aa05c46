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

test("shots without a figure, and shots that cannot be flown, take no part", () => {
  const shots = session({ factors: { drag: 0.9, lift: 1.1 }, ground: 4 });
  const sound = figure(calibrate(shots, AIR, { ground: 4 }));
  const topped = { strike: { speed: 40, launch: -5, spin: 3000 }, carry: 5, landingAngle: 10 };
  const others = [
    { strike: shots[0]!.strike },
    { strike: shots[0]!.strike, carry: Number.NaN, height: Number.NaN, landingAngle: Number.NaN },
    { ...shots[0]!, strike: { ...shots[0]!.strike, spin: -5 } },
    topped,
  ];
  expect(calibrate([...others, ...shots], AIR, { ground: 4 })).toEqual(sound);
  expect(sound).toMatchObject({ shots: 12, figures: 36 });
});

test("four figures of three shots are enough, and three are not", () => {
  const shots = session({ factors: { drag: 0.9, lift: 1.1 } }, 3);
  const heights = shots.map(({ strike, height }) => ({ strike, height }));
  expect(calibrate(heights, AIR)).toMatchObject({ kind: "unavailable" });
  const { carry } = shots[0]!;
  const found = figure(calibrate([{ ...heights[0]!, carry }, ...heights.slice(1)], AIR));
  expect(found.figures).toBe(4);
  expect(found.drag.value).toBeCloseTo(0.9, 3);
  expect(found.lift.value).toBeCloseTo(1.1, 3);
});

test("limits are those of linear regression at the fit", () => {
  // Source: squares over figures less 2, slopes by differences, the inverse of two by two by hand; t(0.975, 7) of a table.
  const shots = session({ factors: { drag: 0.95, lift: 1.05 } }, 3, 0.5);
  const found = figure(calibrate(shots, AIR));
  const residuals = (drag: number, lift: number) =>
    shots.flatMap((shot) => {
      const flight = figure(flyBall(shot.strike, AIR, { factors: { drag, lift } }));
      return [
        (flight.carry - shot.carry) / 2,
        flight.height - shot.height,
        flight.landingAngle - shot.landingAngle,
      ];
    });
  const { drag, lift } = found.factors;
  const squares = residuals(drag, lift).reduce((sum, one) => sum + one * one, 0);
  expect(found.residual).toBeCloseTo(Math.sqrt(squares / 7), 2);
  const [byDrag, byLift] = [
    residuals(drag + 0.01, lift).map((one, i) => (one - residuals(drag - 0.01, lift)[i]!) / 0.02),
    residuals(drag, lift + 0.01).map((one, i) => (one - residuals(drag, lift - 0.01)[i]!) / 0.02),
  ];
  const product = (one: number[], other: number[]) => one.reduce((sum, a, i) => sum + a * other[i]!, 0);
  const [dd, dl, ll] = [product(byDrag, byDrag), product(byDrag, byLift), product(byLift, byLift)];
  const reach = 2.3646 * Math.sqrt(squares / 7 / (dd * ll - dl * dl));
  expect((found.drag.high - found.drag.value) / (reach * Math.sqrt(ll))).toBeCloseTo(1, 1);
  expect((found.lift.value - found.lift.low) / (reach * Math.sqrt(dd))).toBeCloseTo(1, 1);
});

test("flights of no golf ball are not settled", () => {
  const odd = [
    { drag: 0.15, lift: 1 },
    { drag: 6, lift: 1 },
    { drag: 1, lift: -0.2 },
    { drag: 2, lift: 6 },
  ];
  for (const factors of odd)
    expect(calibrate(session({ factors }), AIR)).toMatchObject({ kind: "unavailable" });
});

test("of a long session 300 shots are taken, evenly", () => {
  const shots = session({ factors: { drag: 0.95, lift: 1.05 } }, 450, 0.7);
  const thinned = Array.from({ length: 300 }, (_, i) => shots[Math.floor(1.5 * i)]!);
  const found = figure(calibrate(shots, AIR));
  expect(found.shots).toBe(300);
  expect(found).toEqual(figure(calibrate(thinned, AIR)));
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
