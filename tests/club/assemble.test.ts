import { describe, expect, test } from "vitest";
import { assemble } from "../../src/club/assemble.ts";
import { inertiaFromPeriod, pendulumPeriod } from "../../src/club/pendulum.ts";
import { swingweightPoints } from "../../src/club/swingweight-points.ts";
import { answer, refusal } from "./answer.ts";

// The worked clubs, derived by hand from the textbook's formulas: point mass m r^2, uniform rod about its end
// m l^2 / 3, parallel axes, compound pendulum T = 2 pi sqrt(I / (m g d)) with g = 9.80665 m/s2.
const metre = 1 / 0.0254;
const clubs: {
  name: string;
  figures: [number, number, number, number, number];
  balance: number;
  inertia: number;
  period: number;
}[] = [
  {
    name: "driver: head 200 g at 1.12 m, shaft 65 g, grip 50 g over 0.27 m",
    figures: [1.12 * metre, 200, 65, 0.56 * metre, 50],
    balance: 0.848095238,
    inertia: 0.279273667,
    period: 2.051431098,
  },
  {
    name: "iron: head 270 g at 0.94 m, shaft 110 g, grip 50 g over 0.27 m",
    figures: [0.94 * metre, 270, 110, 0.47 * metre, 50],
    balance: (0.27 * 0.94 + 0.11 * 0.47 + 0.05 * 0.135) / 0.43,
    inertia: 0.272185667,
    period: 1.873272393,
  },
];

describe("assemble(length, head, shaft, shaftBalance, grip)", () => {
  test.each(clubs)("agrees with the worked $name", ({ figures, balance, inertia, period }) => {
    const club = answer(assemble(...figures));
    expect(club.balance / metre).toBeCloseTo(balance, 9);
    expect(club.inertiaButt / 1e4).toBeCloseTo(inertia, 9);
    expect(answer(pendulumPeriod(club.weight, club.balance, club.inertiaButt))).toBeCloseTo(period, 9);
    expect(answer(inertiaFromPeriod(club.weight, club.balance, period)) / 1e4).toBeCloseTo(inertia, 8);
  });

  test("gives the worked driver D1.11", () => {
    // By hand: 315 / 28.349523125 * (33.3896 - 14) = 215.443 in-oz, 1.11 points over D0 (anchor from memory).
    const club = answer(assemble(44.0945, 200, 65, 22.04725, 50));
    expect(club.swingweight).toBe("D1.1");
    expect(swingweightPoints(club.moment14) - 30).toBeCloseTo(1.11, 2);
  });

  test("puts a tip weight at the club's end and a butt weight at the butt", () => {
    const plain = answer(assemble(40, 250, 100, 20, 50));
    const loaded = answer(assemble(40, 250, 100, 20, 50, 4, 6));
    // By hand: 4 g * 26 in less 6 g * 14 in about the fulcrum; 4 g * (101.6 cm)^2 about the butt.
    expect(loaded.moment14 - plain.moment14).toBeCloseTo((4 * 26 - 6 * 14) / 28.349523125, 10);
    expect(loaded.inertiaButt - plain.inertiaButt).toBeCloseTo(0.004 * 101.6 ** 2, 9);
  });

  test("shares add up to the club", () => {
    const club = answer(assemble(37, 268, 105, 18, 48, 2, 3));
    const sum = (of: (share: (typeof club.shares)[number]) => number) =>
      club.shares.reduce((total, share) => total + of(share), 0);
    expect(sum((share) => share.weight)).toBeCloseTo(club.weight, 10);
    expect(sum((share) => share.moment)).toBeCloseTo(club.moment14, 10);
    expect(sum((share) => share.points) * 1.75).toBeCloseTo(club.moment14, 10);
    expect(sum((share) => share.inertia)).toBeCloseTo(club.inertiaButt, 10);
  });

  test("gives moments about 12 and 14 inches that differ by two inches of weight", () => {
    const club = answer(assemble(37, 268, 105, 18, 48));
    expect(club.moment12 - club.moment14).toBeCloseTo((2 * club.weight) / 28.349523125, 10);
  });

  test("gives the inertia about the grip point that parallel axes give", () => {
    const club = answer(assemble(37, 268, 105, 18, 48));
    const kg = club.weight / 1000;
    const cm = (inches: number) => inches * 2.54;
    const own = club.inertiaButt - kg * cm(club.balance) ** 2;
    expect(club.inertiaGrip).toBeCloseTo(own + kg * cm(club.balance - 5) ** 2, 9);
  });

  test("answers a club beyond the scale with its moment in place of a code", () => {
    const club = answer(assemble(35, 500, 110, 17, 60));
    expect(refusal(club.swingweight)).toContain(club.moment14.toFixed(2));
  });

  test.each([
    [[0, 200, 65, 22, 50], "length"],
    [[10, 200, 65, 5, 50], "length"],
    [[44, -1, 65, 22, 50], "head"],
    [[44, 200, 0, 22, 50], "shaft"],
    [[44, 200, 65, 44, 50], "shaftBalance"],
    [[44, 200, 65, 0, 50], "shaftBalance"],
    [[44, 200, 65, 22, Number.NaN], "grip"],
    [[44, 200, 65, 22, 50, -2], "tip"],
    [[44, 200, 65, 22, 50, 0, -2], "butt"],
    [[1e200, 1e200, 65, 22, 50], "length is 1e+200"],
  ])("refuses %j and names the %s", (figures, name) => {
    expect(refusal(assemble(...(figures as [number, number, number, number, number])))).toContain(name);
  });
});
