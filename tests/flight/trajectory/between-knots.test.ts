import { describe, expect, test } from "vitest";
import { StepCurve, spinBetween } from "../../../src/flight/trajectory/between-knots.ts";
import { KNOT, Knots, STRIDE } from "../../../src/flight/trajectory/knots.ts";

type Polynomial = readonly number[];
const at = (p: Polynomial, t: number) => p.reduceRight((sum, c) => sum * t + c, 0);
const slope = (p: Polynomial): Polynomial => p.slice(1).map((c, i) => c * (i + 1));

/** Three knots whose last two hold a polynomial of the time since the first of them, in the given coordinate. */
function knotsOf(p: Polynomial, h: number, axis: number): Knots {
  const knots = new Knots();
  const [velocity, acceleration] = [slope(p), slope(slope(p))];
  for (const [knot, t] of [
    [1, 0],
    [2, h],
  ] as const) {
    knots.data[knot * STRIDE] = 7 + t;
    knots.data[knot * STRIDE + KNOT.x + axis] = at(p, t);
    knots.data[knot * STRIDE + KNOT.vx + axis] = at(velocity, t);
    knots.data[knot * STRIDE + KNOT.ax + axis] = at(acceleration, t);
  }
  knots.count = 3;
  return knots;
}

/** The curve of a polynomial over a step of h seconds. */
const curve = (p: Polynomial, h = 1) => new StepCurve().set(knotsOf(p, h, 1), 1, 1);

describe("the curve between two knots", () => {
  test("is the polynomial of fifth degree that both knots lie on, in every coordinate", () => {
    const p = [3, -2, 1.5, 0.7, -0.4, 0.25];
    for (const axis of [0, 1, 2]) {
      const between = new StepCurve().set(knotsOf(p, 1.6, axis), 1, axis);
      for (const part of [0, 0.2, 0.5, 0.9, 1]) {
        expect(between.place(part)).toBeCloseTo(at(p, 1.6 * part), 10);
        expect(between.velocity(part)).toBeCloseTo(at(slope(p), 1.6 * part), 10);
      }
    }
  });

  test("has its top where it stops rising", () => {
    // By hand: 10 t - 5 t^2 stops at 1, t - t^5 / 5 at 1.
    expect(curve([0, 10, -5], 4).top()).toBeCloseTo(0.25, 5);
    expect(curve([0, 1, 0, 0, 0, -0.2], 2).top()).toBeCloseTo(0.5, 6);
    expect(curve([0, 1, 0, 0, 0, -0.2], 1.05).top()).toBeCloseTo(1 / 1.05, 6);
    expect(curve([0, 1, 0, 0, 0, -0.2], 8).top()).toBeCloseTo(0.125, 6);
    // Slope (1 - t) (1 + t + 9 t^2): rises faster before it stops.
    expect(curve([0, 1, 0, 8 / 3, -9 / 4], 1.5).top()).toBeCloseTo(1 / 1.5, 6);
  });

  test("has its top at an end where it does not turn between them", () => {
    expect(curve([0, 10, -5], 0.9).top()).toBe(1);
    expect(curve([0, -1, -5]).top()).toBe(0);
    expect(curve([0, -1, 5]).top()).toBe(0);
    expect(curve([0, 0, -5]).top()).toBe(0);
    expect(curve([2]).top()).toBe(0);
  });

  test("has its top in between where it starts level and rises first", () => {
    // t^2 / 2 - t^3 / 3 has the slope t (1 - t).
    expect(curve([0, 0, 1 / 2, -1 / 3], 2).top()).toBeCloseTo(0.5, 6);
    expect(curve([0, 0, 1 / 2, -1 / 3], 0.9).top()).toBe(1);
  });

  test("falls through a level where the polynomial has it", () => {
    // By hand: 1 - t^2, 1 - t^5 and t - t^2, whose second crossing of 0.09 is at 0.9.
    expect(curve([1, 0, -1]).fallThrough(0.75, 0)).toBeCloseTo(0.5, 7);
    expect(curve([1, 0, 0, 0, 0, -1]).fallThrough(0.5, 0)).toBeCloseTo(0.5 ** 0.2, 7);
    expect(curve([0, 1, -1]).fallThrough(0.09, 0.5)).toBeCloseTo(0.9, 7);
    expect(curve([5, -2], 3).fallThrough(2, 0)).toBeCloseTo(0.5, 7);
    expect(curve([1, 0, -1]).fallThrough(0, 0)).toBeCloseTo(1, 7);
  });

  test("falls through a level where straight steps would leave the curve", () => {
    // 1 - t^5 hardly falls at first; the other bends both ways on its way down.
    expect(curve([1, 0, 0, 0, 0, -1]).fallThrough(0.999, 0)).toBeCloseTo(0.001 ** 0.2, 7);
    expect(curve([1, 0, 0, 0, 0, -1]).fallThrough(1 - 1e-10, 0)).toBeCloseTo(0.01, 7);
    const bent = [1, -4, 12, -16, 6];
    const found = curve(bent).fallThrough(0.45, 0);
    expect(at(bent, found)).toBeCloseTo(0.45, 7);
  });

  test("falls through its own top there", () => {
    expect(curve([0, 1, -1]).fallThrough(0.25, 0.5)).toBeCloseTo(0.5, 3);
  });
});

test("spin between two knots is the cubic that has both spins and their rates", () => {
  const p = [3000, -120, 14, -3];
  const knots = new Knots();
  for (const [knot, t] of [
    [1, 0],
    [2, 1.6],
  ] as const) {
    knots.data[knot * STRIDE] = 7 + t;
    knots.data[knot * STRIDE + KNOT.spin] = at(p, t);
    knots.data[knot * STRIDE + KNOT.slowing] = at(slope(p), t);
  }
  for (const part of [0, 0.3, 0.5, 0.8, 1])
    expect(spinBetween(knots, 1, part)).toBeCloseTo(at(p, 1.6 * part), 8);
});

test("knots beyond the room that there is keep those before them", () => {
  const knots = new Knots();
  const room = knots.data.length / STRIDE;
  knots.data.forEach((_, i) => {
    knots.data[i] = i;
  });
  knots.count = room - 1;
  const { data } = knots;
  knots.reserve();
  expect(knots.data).toBe(data);
  knots.count = room;
  knots.reserve();
  expect(knots.data.length).toBe(2 * data.length);
  expect([...knots.data.subarray(0, data.length)]).toEqual([...data]);
});
