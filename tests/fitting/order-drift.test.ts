import { describe, expect, it } from "vitest";
import { driftForPlayer, driftWarnings, orderDrift } from "../../src/fitting/order-drift.ts";
import { sessionOfShots } from "./session-of-shots.ts";

describe("orderDrift(session)", () => {
  it("finds a steady fall whatever the build, by exact arithmetic", () => {
    // Hit in turn A, B, A, B ...: carry falls by half a yard a shot, B is 5 yd longer throughout, no other spread.
    const at = (i: number, build: number) =>
      160 - 0.5 * (2 * i + build) + 5 * build + [0.1, -0.1, 0, 0.1, -0.1, 0][i]!;
    const shots = (build: number) => Array.from({ length: 6 }, (_, i) => Number(at(i, build).toFixed(2)));
    const session = sessionOfShots({ A: shots(0), B: shots(1) });
    const [drift] = orderDrift(session);
    expect(drift).toMatchObject({ metric: "carry", overSession: expect.closeTo(-5.5, 0) });
    expect(driftWarnings(session)[0]).toMatch(/^Carry fell by about \d+ yd .*tired/);
    expect(driftForPlayer(session)[0]).toMatch(
      /^Carry fell by about \d+ yd from your first shot .*you may have tired/,
    );
    expect(driftForPlayer(session)[0]).not.toMatch(/the player|judged/);
  });

  it("does not take a build hit late for a drift", () => {
    const session = sessionOfShots({ A: [150, 151, 149, 150], B: [160, 161, 159, 160] });
    expect(driftWarnings(session)).toEqual([]);
  });

  it("says nothing of a few shots, though they lie on a line", () => {
    // A line and two builds take three figures: eight shots leave five.
    const rising = (from: number, each: number) =>
      Array.from({ length: each }, (_, i) => from + i + (i % 2) / 10);
    const two = (each: number) => sessionOfShots({ A: rising(150, each), B: rising(155, each) });
    expect(orderDrift(two(2))).toEqual([]);
    expect(orderDrift(two(3))).toEqual([]);
    expect(orderDrift(two(4))).toHaveLength(1);
  });
});
