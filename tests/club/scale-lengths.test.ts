import { expect, test } from "vitest";
import { scaleLengths } from "../../src/club/scale-lengths.ts";
import type { SetRequest } from "../../src/club/set-request.ts";

const request: SetRequest = {
  name: "Small",
  clubs: [
    { club: "7", length: 37, rawLength: 40, tipTrim: 1, bore: 0.5, head: 270, loft: 34 },
    { club: "8", length: 36.5 },
  ],
  target: { kind: "swingweight", code: "D2" },
  shafts: { kind: "steps", weight: 110, step: 3 },
  grip: { weight: 50, length: 10.5, balance: 5 },
  tipTrims: { tip: 0.5, step: 0.25, reference: "7" },
  shaftBlank: { balanceShare: 0.5, limits: { tip: 3, butt: 4, cutLength: 30 } },
  tape: { up: 2, most: 6 },
  tolerances: { length: 0.125, loft: 0.5 },
};

test("twice as long are all lengths of a set, and weights, angles and shares stay as they are", () => {
  expect(scaleLengths(request, (length) => 2 * length)).toEqual({
    ...request,
    clubs: [
      { club: "7", length: 74, rawLength: 80, tipTrim: 2, bore: 1, head: 270, loft: 34 },
      { club: "8", length: 73 },
    ],
    grip: { weight: 50, length: 21, balance: 10 },
    tipTrims: { tip: 1, step: 0.5, reference: "7" },
    shaftBlank: { balanceShare: 0.5, limits: { tip: 6, butt: 8, cutLength: 60 } },
    tape: { up: 4, most: 6 },
    tolerances: { length: 0.25, loft: 0.5 },
  });
});

test("what a set does not say stays unsaid", () => {
  const { clubs, target, shafts } = request;
  const bare: SetRequest = { clubs, target, shafts, grip: { weight: 50 }, shaftBlank: { balanceShare: 0.5 } };
  expect(Object.keys(scaleLengths(bare, (length) => length))).toEqual(Object.keys(bare));
  expect(scaleLengths(bare, (length) => length)).toEqual(bare);
});
