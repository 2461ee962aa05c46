import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { launchDirection } from "../../../src/flight/impact/launch-direction.ts";
import { smashFactor } from "../../../src/flight/impact/smash-factor.ts";
import { spinAxis } from "../../../src/flight/impact/spin-axis.ts";
import { spinLoft } from "../../../src/flight/impact/spin-loft.ts";
import { figure } from "../expect-figure.ts";

// Source: vector geometry evaluated independently in Python.
const ROWS = [
  [{ dynamicLoft: 12, attack: -1, face: 0, path: 0 }, 12.999999999999968, 0],
  [{ dynamicLoft: 12, attack: 3, face: 2, path: -2 }, 9.833273018887166, 23.514475273873366],
  [{ dynamicLoft: 30, attack: -4, face: -2, path: 1 }, 34.121121356834706, -4.623234590061359],
  [{ dynamicLoft: 14, attack: 4, face: -1.5, path: 2.5 }, 10.750147058232766, -21.22205842005037],
] as const;

describe.each(ROWS)("delivery %o", (delivery, loft, tilt) => {
  test("has the spin loft and spin axis of the reference to 1e-9", () => {
    expect(Math.abs(figure(spinLoft(delivery)) - loft)).toBeLessThan(1e-9);
    expect(Math.abs(figure(spinAxis(delivery)) - tilt)).toBeLessThan(1e-9);
  });
});

const angle = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const deliveries = fc.record({
  dynamicLoft: fc.double({ min: 2, max: 60, noNaN: true }),
  attack: fc.double({ min: -12, max: 1, noNaN: true }),
  face: angle(15),
  path: angle(15),
});

test("spin loft and axis meet their closed forms", () => {
  // Source: cos = cos L cos A cos(F - P) + sin L sin A; sin tilt = cos A cos L sin(F - P) / sin(spin loft).
  fc.assert(
    fc.property(deliveries, (delivery) => {
      const [l, a, turn] = [delivery.dynamicLoft, delivery.attack, delivery.face - delivery.path].map(
        (degrees) => (degrees * Math.PI) / 180,
      );
      const loft = (figure(spinLoft(delivery)) * Math.PI) / 180;
      const tilt = (figure(spinAxis(delivery)) * Math.PI) / 180;
      expect(Math.cos(loft)).toBeCloseTo(
        Math.cos(l!) * Math.cos(a!) * Math.cos(turn!) + Math.sin(l!) * Math.sin(a!),
        12,
      );
      expect(Math.sin(tilt) * Math.sin(loft)).toBeCloseTo(Math.cos(a!) * Math.cos(l!) * Math.sin(turn!), 12);
    }),
  );
});

test("the ball starts between path and face, nearer the face", () => {
  fc.assert(
    fc.property(deliveries, (delivery) => {
      const { launch } = figure(launchDirection({ ...delivery, face: 0, path: 0 }));
      const share = (launch - delivery.attack) / (delivery.dynamicLoft - delivery.attack);
      expect(share).toBeGreaterThan(0.5);
      expect(share).toBeLessThan(1);
    }),
  );
});

test("an iron starts its ball 75 to 85 percent of the way to the face", () => {
  // Source: rigid bodies that roll, tan(below the normal) = (2/7)(1 + m/M) / ((1 + e)(1 + 2m/7M)) tan(spin loft).
  const { launch, direction } = figure(launchDirection({ dynamicLoft: 24, attack: -4, face: 4, path: -4 }));
  expect((launch + 4) / 28).toBeGreaterThan(0.75);
  expect((launch + 4) / 28).toBeLessThan(0.85);
  expect(direction).toBeGreaterThan(0);
  expect(direction).toBeLessThan(4);
});

test("the ball starts where restitution and rolling along the face put it", () => {
  // Source: head velocity split along and across the normal of the face, gains (1 + e) / (1 + m/M) and
  // (2/7) / (1 + 2m/7M), in Python with vectors; the last row for a 200 g head, e = 0.83.
  const rows = [
    [{ dynamicLoft: 24, attack: -4, face: 4, path: -4 }, undefined, 18.481453573697163, 2.270279552203155],
    [{ dynamicLoft: 30, attack: -4 }, undefined, 23.03376883296992, 0],
    [{ dynamicLoft: 20, attack: -5, path: 6 }, undefined, 15.162250807883442, 1.237953925745904],
    [{ dynamicLoft: 50, attack: -6, face: -12, path: 9 }, undefined, 34.45106784644578, -3.655629351174773],
    [{ dynamicLoft: 12, attack: 3 }, { effectiveMass: 0.2, restitution: 0.83 }, 10.365519808458652, 0],
  ] as const;
  for (const [delivery, head, launch, direction] of rows) {
    const found = figure(launchDirection(delivery, head));
    expect(found.launch).toBeCloseTo(launch, 9);
    expect(found.direction).toBeCloseTo(direction, 9);
  }
});

test("the start of a ball names what no delivery or head has", () => {
  const delivery = { dynamicLoft: 24, attack: -4 };
  expect(launchDirection({ ...delivery, attack: 50 })).toMatchObject({
    message: "attack should be -45 to 45 degrees, not 50",
  });
  expect(launchDirection(delivery, { effectiveMass: 2, restitution: 0.8 })).toMatchObject({
    message: "effective mass should be 0.02 to 1 kg, not 2",
  });
  expect(launchDirection(delivery, { effectiveMass: 0.2, restitution: 1.1 })).toMatchObject({
    message: "restitution should be 0 to 1, not 1.1",
  });
});

test("an upright axis is 0 and never minus 0", () => {
  expect(figure(spinAxis({ dynamicLoft: 12, attack: -1, face: 0, path: 0 }))).toBe(0);
});

test("a face that looks where the head moves spins nothing, so that there is no axis", () => {
  expect(figure(spinLoft({ dynamicLoft: 5, attack: 5 }))).toBe(0);
  expect(spinAxis({ dynamicLoft: 5, attack: 5, face: 0, path: 0 })).toMatchObject({ kind: "unavailable" });
});

test("smash factor of a central blow is Newton's: (1 + e) / (1 + m/M)", () => {
  // Source: Newton's law of restitution; 200 g head, e = 0.83, 45.93 g ball: 1.83 / 1.22965 = 1.48823.
  expect(figure(smashFactor(0.2, 0.83, 0))).toBeCloseTo(1.48823, 5);
  // At 90 degrees only the rolling part is left: (2/7) / (1 + (2/7)(0.2)) for a head five times the ball.
  expect(figure(smashFactor(5 * 0.04593, 0.5, 90))).toBeCloseTo(2 / 7 / (1 + 2 / 35), 12);
});

test("impact geometry refuses what is no angle", () => {
  expect(spinLoft({ dynamicLoft: Number.NaN, attack: 0 })).toMatchObject({ kind: "invalid" });
  expect(spinAxis({ dynamicLoft: 20, attack: 0, face: 200, path: 0 })).toEqual({
    kind: "invalid",
    message: "face should be -60 to 60 degrees, not 200",
  });
  expect(smashFactor(0, 0.8, 10)).toMatchObject({ kind: "invalid" });
});
