import { expect, it } from "vitest";
import { ASSEMBLE } from "../../../src/functions/balance/assemble.ts";
import { HEADWEIGHT } from "../../../src/functions/balance/head-weight.ts";
import { INERTIA } from "../../../src/functions/balance/inertia.ts";
import { WEIGHTTOADD } from "../../../src/functions/balance/weight-to-add.ts";
import { callFunction } from "../../../src/functions/define-function.ts";
import { CUTWEIGHT } from "../../../src/functions/set/cut-weight.ts";
import { refusal } from "../../club/answer.ts";

it("ASSEMBLE keeps weight, balance point and inertia of a club beyond the scale; only its code is a problem", () => {
  // By arithmetic: 1000 g at 38 in alone are 846.6 in-oz about 14 in; the scale ends at 283.33.
  const [row] = callFunction(ASSEMBLE, [38, 1000, 110, 19, 50]) as unknown[][];
  expect(row![0]).toBe(1160);
  expect(row![1]).toBeCloseTo((1000 * 38 + 110 * 19 + (50 * 13.5) / 2.54) / 1160, 9);
  expect(refusal(row![2])).toContain("beyond the swingweight scale");
  expect(row![3]).toBeGreaterThan(9000);
});

it("ASSEMBLE puts headings above where they are asked for", () => {
  const [headings, row] = callFunction(ASSEMBLE, [38, 252, 110, 19, 50, null, null, true]) as unknown[][];
  expect(headings).toEqual(["Weight (g)", "Balance (in)", "Swingweight", "Inertia (kg cm2)"]);
  expect(row![0]).toBe(412);
});

it("ASSEMBLE counts tip and butt weight, and a blank as none", () => {
  const [bare] = callFunction(ASSEMBLE, [38, 252, 110, 19, 50]) as unknown[][];
  const [loaded] = callFunction(ASSEMBLE, [38, 252, 110, 19, 50, 4, 6]) as unknown[][];
  expect(loaded![0]).toBe((bare![0] as number) + 10);
  const [blank] = callFunction(ASSEMBLE, [38, 252, 110, 19, 50, "", 0]) as unknown[][];
  expect(blank).toEqual(bare);
});

it("HEADWEIGHT refuses a code that would ask for less than no head", () => {
  // By arithmetic, about 14 in: 1000 g of shaft bring 5000 g in, 50 g of grip take 434; A0 is 161 in-oz, 4564 g in.
  expect(refusal(callFunction(HEADWEIGHT, ["A0", 38, 1000, 19, 50]))).toContain("less than none");
});

it("HEADWEIGHT, down a column of codes, answers a problem only in the row that has one", () => {
  const answer = callFunction(HEADWEIGHT, [[["D2"], ["D12"], [null]], 38, 110, 19, 50]) as unknown[][];
  expect(answer[0]![0]).toBeCloseTo(251.504, 3);
  expect(refusal(answer[1]![0])).toContain('swingweight "D12" is no code');
  expect(answer[2]![0]).toBe("");
});

it("WEIGHTTOADD refuses the fulcrum, where weight moves no scale", () => {
  expect(refusal(callFunction(WEIGHTTOADD, ["D0", "D2", 14]))).toContain("fulcrum");
});

it("INERTIA takes the pivot to be the butt where it is blank", () => {
  const given = callFunction(INERTIA, [315, 33.389576, 2.051431098, 0]);
  expect(callFunction(INERTIA, [315, 33.389576, 2.051431098, null])).toBe(given);
});

it("INERTIA refuses a period that no club with this balance point can have", () => {
  expect(refusal(callFunction(INERTIA, [315, 33.389576, 1]))).toContain("period");
});

it("CUTWEIGHT refuses to cut a shaft longer", () => {
  expect(refusal(callFunction(CUTWEIGHT, [120, 40, 41]))).toContain("longer than the raw shaft");
});
