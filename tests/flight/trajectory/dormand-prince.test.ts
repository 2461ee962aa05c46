import { expect, test } from "vitest";
import { type CoefficientModel, POINT } from "../../../src/flight/ball/coefficient-model.ts";
import { DormandPrinceStep } from "../../../src/flight/trajectory/dormand-prince.ts";
import { Forces } from "../../../src/flight/trajectory/forces.ts";
import { KNOT, Knots, STRIDE } from "../../../src/flight/trajectory/knots.ts";
import { seededRandom } from "../../../src/stats/seeded-random.ts";

// Source: J. R. Dormand and P. J. Prince, Journal of Computational and Applied Mathematics 6 (1980) 19-26, table 2.
const STAGES = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];
const FOURTH = [5179 / 57600, 0, 7571 / 16695, 393 / 640, -92097 / 339200, 187 / 2100, 1 / 40];

/** Coefficients that go with all that a model is asked with. */
const MODEL: CoefficientModel = {
  name: "made up",
  source: "given",
  coefficients(point) {
    const [speed, spin, reynolds] = [point[POINT.speed]!, point[POINT.spin]!, point[POINT.reynolds]!];
    if (!(spin >= 0)) throw new Error("asked with a spin below 0");
    point[POINT.drag] = 0.2 + 1e-3 * speed + 1e-5 * spin + 1e-7 * reynolds;
    point[POINT.lift] = 0.1 + 2e-3 * speed + 2e-5 * spin + 3e-7 * reynolds;
  },
  measured: (speed, spin, reynolds) => speed > 20 && spin > 1000 && reynolds > 50_000,
};

/** Forces as the doc comment of `Forces` tells them, with vectors. State and rate: x, y, z, vx, vy, vz, spin. */
function rateOf(f: Forces, [, , , vx, vy, vz, w]: readonly number[]): number[] {
  const u = [vx! - f.windAlong, vy!, vz! - f.windAcross];
  const speed = Math.hypot(...u);
  const spin = Math.max(0, w!);
  const point = Float64Array.of(speed, spin, f.reynolds * speed, 0, 0);
  f.model.coefficients(point);
  const [ax, ay, az] = [f.axisX, f.axisY, f.axisZ];
  const side = [ay * u[2]! - az * u[1]!, az * u[0]! - ax * u[2]!, ax * u[1]! - ay * u[0]!];
  const length = Math.hypot(...side);
  const push = u.map((one, i) => {
    const lift = length > 0 ? (f.lift * point[POINT.lift]! * speed * speed * side[i]!) / length : 0;
    return lift - f.drag * point[POINT.drag]! * speed * one;
  });
  return [vx!, vy!, vz!, push[0]!, push[1]! - f.gravity, push[2]!, -f.slowing * spin * speed];
}

/** The step as the paper has it, stage by stage. */
function stepOf(f: Forces, state: readonly number[], h: number) {
  const rates: number[][] = [];
  let at: number[] = [];
  for (const weights of STAGES) {
    at = state.map((one, i) => one + h * weights.reduce((sum, a, s) => sum + a * rates[s]![i]!, 0));
    rates.push(rateOf(f, at));
  }
  const fifth = [...STAGES[6]!, 0];
  const errors = state.map((_, i) =>
    Math.abs(h * rates.reduce((sum, rate, s) => sum + (fifth[s]! - FOURTH[s]!) * rate[i]!, 0)),
  );
  return { at, rate: rates[6]!, errors: errors.map((one, i) => (i === 6 ? one * 1e-3 : one)) };
}

const random = seededRandom(11);
const between = (low: number, high: number) => low + (high - low) * random.uniform();

/** Forces and a state, of any size within a ball's, thin air and thick, slow spin loss and quick. */
function drawn() {
  const forces = new Forces();
  forces.model = MODEL;
  forces.gravity = between(0, 12);
  forces.slowing = 10 ** between(-4, -1.5);
  forces.windAlong = between(-15, 15);
  forces.windAcross = between(-15, 15);
  const axis = [between(-1, 1), between(-1, 1), between(-1, 1)];
  const length = Math.hypot(...axis);
  [forces.axisX, forces.axisY, forces.axisZ] = axis.map((one) => one / length) as [number, number, number];
  forces.setAir(10 ** between(-2, 0.2), 1.8e-5, between(0.5, 1.5), between(0.5, 1.5));
  const state = [between(-9, 9), between(-9, 9), between(-9, 9)];
  state.push(between(-60, 60), between(-60, 60), between(-60, 60), between(0, 6000));
  return { forces, state, h: between(0.05, 0.8) };
}

test("a step and its error are those of the paper's table for forces written with vectors", () => {
  const most = new Set<number>();
  for (let draw = 0; draw < 300; draw += 1) {
    const { forces, state, h } = drawn();
    const { data } = new Knots();
    const [from, to] = [STRIDE, 2 * STRIDE];
    data[from] = 3;
    data.set(state, from + KNOT.x);
    forces.rate(data, from + KNOT.vx, data, from + KNOT.ax);
    rateOf(forces, state)
      .slice(3)
      .forEach((rate, i) => {
        expect(data[from + KNOT.ax + i]! / rate).toBeCloseTo(1, 9);
      });
    const error = new DormandPrinceStep().take(forces, data, from, h);
    const { at, rate, errors } = stepOf(forces, state, h);
    most.add(errors.indexOf(Math.max(...errors)));
    // Errors are differences of nearly equal sums, whose rounding is all that the smallest consist of.
    expect(Math.abs(error - Math.max(...errors))).toBeLessThan(1e-6 * Math.max(...errors) + 1e-12);
    expect(data[to]).toBe(3 + h);
    at.forEach((one, i) => {
      expect(data[to + KNOT.x + i]).toBeCloseTo(one, 7);
    });
    rate.slice(3).forEach((one, i) => {
      expect(data[to + KNOT.ax + i]).toBeCloseTo(one, 7);
    });
  }
  // Each coordinate, its velocity and the spin decide once at least.
  expect([...most].sort()).toEqual([0, 1, 2, 3, 4, 5, 6]);
});

test("a ball that flies along its own axis has no lift", () => {
  const { forces } = drawn();
  [forces.windAlong, forces.windAcross] = [4, -2];
  [forces.axisX, forces.axisY, forces.axisZ] = [1, 0, 0];
  const { data } = new Knots();
  data.set([54, 0, -2, 3000], KNOT.vx);
  forces.rate(data, KNOT.vx, data, KNOT.ax);
  expect(data[KNOT.ay]).toBeCloseTo(-forces.gravity, 12);
  expect(data[KNOT.az]).toBeCloseTo(0, 12);
  // Without gravity nothing turns it, so that no stage of a step has lift either.
  forces.gravity = 0;
  forces.rate(data, KNOT.vx, data, KNOT.ax);
  new DormandPrinceStep().take(forces, data, 0, 0.2);
  expect(data[STRIDE + KNOT.vy]).toBe(0);
  expect(data[STRIDE + KNOT.vx]).toBeLessThan(54);
});

test("whether figures were measured is asked by the speed through the air", () => {
  const { forces } = drawn();
  [forces.windAlong, forces.windAcross] = [-10, 15];
  forces.setAir(1.2, 1.8e-5, 1, 1);
  // A Reynolds number of 1 m/s is 0.04267 x 1.2 / 1.8e-5 = 2845, so that 20 m/s are 56,893.
  expect(forces.measured(0, 0, 0, 2000)).toBe(false);
  expect(forces.measured(10.1, 0, 15, 2000)).toBe(true);
  expect(forces.measured(9.9, 0, 15, 2000)).toBe(false);
  expect(forces.measured(-10, 0, 35.1, 2000)).toBe(true);
  expect(forces.measured(-10, 0, 34.9, 2000)).toBe(false);
  expect(forces.measured(-10, 20.1, 15, 2000)).toBe(true);
  expect(forces.measured(-10, 19.9, 15, 2000)).toBe(false);
  expect(forces.measured(-10, 20.1, 15, 900)).toBe(false);
  forces.setAir(1, 1.8e-5, 1, 1);
  expect(forces.measured(-10, 20.1, 15, 2000)).toBe(false);
});
