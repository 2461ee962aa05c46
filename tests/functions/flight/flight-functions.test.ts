import { expect, test } from "vitest";
import { callFunction } from "../../../src/functions/define-function.ts";
import { AIRAT } from "../../../src/functions/flight/air-at.ts";
import { AIRDENSITY } from "../../../src/functions/flight/air-density.ts";
import { FLIGHT } from "../../../src/functions/flight/flight.ts";
import { NORMALIZE } from "../../../src/functions/flight/normalize.ts";
import { SPINLOFT } from "../../../src/functions/flight/spin-loft.ts";

test("FLIGHT mirrors left and right, and takes units in any case", () => {
  const right = callFunction(FLIGHT, [120, 16, 5800, 6, 2]) as number[][];
  const left = callFunction(FLIGHT, [120, 16, 5800, -6, -2, null, "US"]) as number[][];
  expect(right[0]![1]).toBeGreaterThan(5);
  expect(left[0]!.map((value, i) => (i === 1 ? -value : value))).toEqual(
    right[0]!.map((value) => expect.closeTo(value, 9)),
  );
  // Exact by definition: 120 mph is 53.6448 m/s, a yard 0.9144 m.
  const metres = callFunction(FLIGHT, [53.6448, 16, 5800, 6, 2, 1.225, "si"]) as number[][];
  expect(metres[0]![0]! / 0.9144).toBeCloseTo(right[0]![0]!, 9);
});

test("FLIGHT spills a row for each shot and stays quiet on an empty one", () => {
  const answer = callFunction(FLIGHT, [
    [[120], [""], [110]],
    [[16], [""], [18]],
    [[5800], [""], [5600]],
    null,
    null,
    null,
    null,
    true,
  ]) as unknown[][];
  expect(answer.map((row) => row.length)).toEqual([6, 6, 6, 6]);
  expect(answer[0]![0]).toBe("Carry");
  expect(answer[2]).toEqual(["", "", "", "", "", ""]);
  // Straight lines between the figures of the same wind-tunnel table: 151.3 yd.
  expect(Math.abs((answer[3]![0] as number) - 151.3)).toBeLessThan(0.5);
});

test("flight functions name the argument that is wrong", () => {
  const message = (answer: unknown) => (answer as { message: string }).message;
  expect(message(callFunction(FLIGHT, [0, 16, 5800]))).toContain("ballSpeed is blank");
  expect(message(callFunction(FLIGHT, [120, 95, 5800]))).toBe(
    "launch angle should be -30 to 89 degrees, not 95",
  );
  expect(message(callFunction(NORMALIZE, [150, 120, 16, 5800, 1.1, null, "imperial"]))).toContain(
    'units is "imperial"',
  );
  expect(message(callFunction(AIRDENSITY, [75, 100, 50]))).toContain("pressure should be 400 to 1100 hPa");
  expect(message(callFunction(AIRAT, ["high"]))).toContain("altitude");
  expect(message(callFunction(SPINLOFT, [30]))).toContain("attack is blank");
});

test("NORMALIZE to the air it was hit in changes nothing", () => {
  expect(callFunction(NORMALIZE, [150, 120, 16, 5800, 1.1, 1.1])).toBe(150);
});
