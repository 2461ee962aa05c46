import { expect, test } from "vitest";
import { simpleParts } from "../../src/club/simple-parts.ts";
import { swingweightDrift } from "../../src/club/swingweight-drift.ts";
import { answer } from "./answer.ts";

const parts = answer(simpleParts(37, 270, 110, 18.5, 50));

// By hand: a uniform shaft balances half way down, so each gram more pulls 4.5 in beyond the fulcrum; 28.349523125 g to
// the ounce and 1.75 inch-ounces to the point.
test("a heavier shaft moves a club by its grams times their way from the fulcrum, and the planned one by nothing", () => {
  const found = answer(swingweightDrift([parts, parts, parts], [110, 118, 105]));
  expect(found[0]).toBe(0);
  expect(found[1]).toBeCloseTo((8 * 4.5) / 28.349523125 / 1.75, 9);
  expect(found[2]).toBeCloseTo((-5 * 4.5) / 28.349523125 / 1.75, 9);
});

test("a weight a club is asked for, and parts that make no club are refused", () => {
  expect(swingweightDrift([parts, parts], [110])).toMatchObject({
    kind: "invalid",
    message: expect.stringContaining("1 shafts for 2 clubs"),
  });
  expect(swingweightDrift([parts], [-1])).toMatchObject({ message: expect.stringContaining("shaft weight") });
  expect(swingweightDrift([{ ...parts, length: 30 }], [110])).toMatchObject({
    message: expect.stringContaining("length is"),
  });
});
