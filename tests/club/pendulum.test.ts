import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assembleClub } from "../../src/club/assemble-club.ts";
import { inertiaFromPeriod, pendulumPeriod } from "../../src/club/pendulum.ts";
import { answer, refusal } from "./answer.ts";
import { anyParts } from "./any-parts.ts";

describe("inertiaFromPeriod(weight, balance, period, pivot)", () => {
  test("of a uniform rod hung at its end is m l^2 / 3", () => {
    // Textbook: T = 2 pi sqrt(2 l / (3 g)); a rod of 1 m swings in 1.638062 s at g = 9.80665 m/s2.
    const period = 2 * Math.PI * Math.sqrt(2 / (3 * 9.80665));
    expect(answer(inertiaFromPeriod(300, 0.5 / 0.0254, period))).toBeCloseTo((0.3 * 100 ** 2) / 3, 7);
  });

  test("gives the same inertia about the butt whichever pivot the club hung from", () => {
    fc.assert(
      fc.property(anyParts, fc.double({ min: 0, max: 15, noNaN: true }), (parts, pivot) => {
        const club = answer(assembleClub(parts));
        const period = answer(pendulumPeriod(club.weight, club.balance, club.inertiaButt, pivot));
        const inertia = answer(inertiaFromPeriod(club.weight, club.balance, period, pivot));
        expect(inertia / club.inertiaButt).toBeCloseTo(1, 9);
      }),
    );
  });

  test("refuses a period that no club with this balance point can have", () => {
    expect(refusal(inertiaFromPeriod(315, 33.39, 1.5))).toContain("1.848 s at least");
  });

  test("refuses the time of several swings, and says what a single one takes at most", () => {
    // Compound pendulum about its end with an own inertia of 3 m b2: T = 2 pi sqrt(4 b / g), b 0.8481 m: 3.695 s.
    expect(refusal(inertiaFromPeriod(315, 33.39, 20.514))).toBe(
      "period is 20.514 s, but a club that balances 33.39 inches from its butt takes 3.7 s at most about this pivot; " +
        "it should be the time of one swing, there and back.",
    );
    expect(refusal(inertiaFromPeriod(315, 33.39, 2 * 2.051431))).toContain("one swing");
    expect(answer(inertiaFromPeriod(315, 33.39, 3.69))).toBeGreaterThan(0);
  });

  test.each([
    [0, 33, 2, 0, "weight"],
    [315, Number.NaN, 2, 0, "balance"],
    [315, 33, 0, 0, "period"],
    [315, 33, 2, Number.NaN, "pivot"],
    [315, 33, 2, 33, "does not swing"],
    [1e308, 33, 2, 0, "weight is 1e+308"],
  ])("refuses (%s, %s, %s, %s): %s", (weight, balance, period, pivot, message) => {
    expect(refusal(inertiaFromPeriod(weight, balance, period, pivot))).toContain(message);
  });
});

describe("pendulumPeriod(weight, balance, inertia, pivot)", () => {
  test.each([
    [315, 33, 0, 0, "inertia"],
    [315, 33, 2700, 33, "does not swing"],
    [315, 33, 100, 30, "less than"],
  ])("refuses (%s, %s, %s, %s): %s", (weight, balance, inertia, pivot, message) => {
    expect(refusal(pendulumPeriod(weight, balance, inertia, pivot))).toContain(message);
  });
});
