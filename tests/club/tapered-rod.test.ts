import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cutRod } from "../../src/club/cut-rod.ts";
import { rodMass } from "../../src/club/rod-mass.ts";
import { taperedRod } from "../../src/club/tapered-rod.ts";

describe("taperedRod, cutRod and rodMass", () => {
  test("a uniform rod balances at half its length with inertia m l^2 / 12 (textbook)", () => {
    const mass = rodMass("shaft", taperedRod(60, 0, 40, 20));
    expect(mass).toMatchObject({ weight: 60, place: 20 });
    expect(mass.spread).toBeCloseTo((60 * 40 ** 2) / 12, 9);
  });

  test("a triangle balances at a third with inertia m l^2 / 18 (textbook)", () => {
    const mass = rodMass("shaft", taperedRod(60, 0, 30, 10));
    expect(mass.place).toBeCloseTo(10, 12);
    expect(mass.spread).toBeCloseTo((60 * 30 ** 2) / 18, 8);
  });

  test("keeps weight and balance point wherever the rod balances, and never a negative density", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 200, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 5, max: 50, noNaN: true }),
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        (weight, start, length, share) => {
          const rod = taperedRod(weight, start, start + length, length * share);
          const mass = rodMass("shaft", rod);
          expect(mass.weight).toBeCloseTo(weight, 9);
          expect(mass.place).toBeCloseTo(start + length * share, 9);
          expect(mass.spread).toBeGreaterThan(0);
          expect(Math.min(rod.startDensity, rod.endDensity)).toBeGreaterThanOrEqual(-1e-12);
        },
      ),
    );
  });

  test("two pieces of a cut rod weigh and balance what the whole did", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (share, cut) => {
          const rod = taperedRod(100, 0, 40, 40 * share);
          const whole = rodMass("shaft", rod);
          const butt = rodMass("butt", cutRod(rod, 0, cut));
          const tip = rodMass("tip", cutRod(rod, cut, 40));
          expect(butt.weight + tip.weight).toBeCloseTo(whole.weight, 8);
          expect(butt.weight * butt.place + tip.weight * tip.place).toBeCloseTo(
            whole.weight * whole.place,
            6,
          );
          const about = (mass: typeof whole) => mass.spread + mass.weight * mass.place ** 2;
          expect(about(butt) + about(tip)).toBeCloseTo(about(whole), 5);
        },
      ),
    );
  });
});
