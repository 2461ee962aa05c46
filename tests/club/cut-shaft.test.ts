import { describe, expect, test } from "vitest";
import { cutShaft } from "../../src/club/cut-shaft.ts";
import { cutWeight } from "../../src/club/cut-weight.ts";
import { resolveTrims } from "../../src/club/resolve-trims.ts";
import { answer, refusal } from "./answer.ts";

describe("cutWeight(rawWeight, rawLength, cutLength)", () => {
  test("takes weight off in proportion to length", () => {
    // By hand: 120 g over 40 in is 3 g an inch.
    expect(cutWeight(120, 40, 36)).toBe(108);
    expect(cutWeight(120, 40, 40)).toBe(120);
  });

  test.each([
    [0, 40, 36, "rawWeight"],
    [120, Number.NaN, 36, "rawLength"],
    [120, 40, 0, "cutLength"],
    [120, 40, 41, "longer than the raw shaft's 40"],
  ])("refuses (%s, %s, %s): %s", (weight, raw, cut, message) => {
    expect(refusal(cutWeight(weight, raw, cut))).toContain(message);
  });
});

describe("cutShaft(raw, trims)", () => {
  test("cuts a uniform shaft as cutWeight does and balances it at half", () => {
    const cut = answer(cutShaft({ weight: 120, length: 40 }, { tip: 2, cutLength: 36 }));
    expect(cut).toMatchObject({ tip: 2, butt: 2, cutLength: 36, warnings: [] });
    expect(cut.weight).toBeCloseTo(108, 10);
    expect(cut.balance).toBeCloseTo(18, 10);
  });

  test("cuts a tapered shaft by its own density", () => {
    // By hand: density 4 g/in at the butt falling to 2 at the tip over 40 in; balance 40 (4 + 2 * 2) / (3 * 6) in.
    // The 20 in at the butt weigh 20 (4 + 3) / 2 = 70 g and balance at 20 (4 + 2 * 3) / (3 * 7) in.
    const raw = { weight: 120, length: 40, balance: 160 / 9 };
    const cut = answer(cutShaft(raw, { tip: 20 }));
    expect(cut.weight).toBeCloseTo(70, 10);
    expect(cut.balance).toBeCloseTo(200 / 21, 10);
    expect(answer(cutShaft({ weight: 120, length: 40, taper: 0.5 }, { tip: 20 })).weight).toBeCloseTo(70, 10);
  });

  test("takes a length written a hair longer than the shaft for the shaft's own", () => {
    expect(answer(cutShaft({ weight: 120, length: 40 }, { cutLength: 40.005 }))).toMatchObject({
      butt: 0,
      cutLength: 40,
    });
  });

  test("warns where a trim passes the maker's limit, and where a taper tip is trimmed", () => {
    const raw = { weight: 120, length: 40 };
    const limits = { tip: 1, butt: 2, cutLength: 37 };
    expect(answer(cutShaft(raw, { tip: 1, butt: 2, limits })).warnings).toEqual([]);
    expect(answer(cutShaft(raw, { tip: 1.5, butt: 2.5, limits, tipKind: "taper" })).warnings).toEqual([
      "A taper tip fits its hosel as it comes; 1.5 in off it needs the maker's word.",
      "Tip trim 1.5 in passes the maker's limit of 1 in.",
      "Butt trim 2.5 in passes the maker's limit of 2 in.",
      "Cut length 36 in is under the maker's least of 37 in.",
    ]);
  });

  test.each([
    [{ weight: 120, length: 40 }, { cutLength: 41 }, "too short"],
    [{ weight: 120, length: 40 }, { tip: 20, butt: 20 }, "too short"],
    [{ weight: 120, length: 40 }, { tip: 1, butt: 1, cutLength: 36 }, "leaves 38 in;"],
    [{ weight: 120, length: 40 }, { tip: -1 }, "tip trim"],
    [{ weight: 120, length: 40, balance: 40 }, {}, "balance point"],
    [{ weight: 120, length: 40, balance: 19, taper: 1 }, {}, "both"],
    [{ weight: 120, length: 40, taper: -1 }, {}, "taper"],
    [{ weight: -120, length: 40 }, {}, "shaft weight"],
  ])("refuses %j cut by %j: %s", (raw, trims, message) => {
    expect(refusal(cutShaft(raw, trims))).toContain(message);
  });
});

test("a shaft without weight or length is refused, and trims that do not fit are refused as they are alone", () => {
  expect(cutShaft({ weight: 0, length: 40 })).toMatchObject({
    kind: "invalid",
    message: expect.stringContaining("shaft weight is 0"),
  });
  expect(cutShaft({ weight: 110, length: 0 })).toMatchObject({
    kind: "invalid",
    message: expect.stringContaining("shaft length is 0"),
  });
  expect(cutShaft({ weight: 110, length: 40 }, { tip: 41 })).toEqual(resolveTrims(40, { tip: 41 }));
});

test("a taper tip as it comes, and trims at the maker's limits, need no warning", () => {
  const limits = { tip: 2, butt: 3, cutLength: 35 };
  expect(answer(cutShaft({ weight: 110, length: 40 }, { tipKind: "taper", butt: 3 })).warnings).toEqual([]);
  expect(answer(cutShaft({ weight: 110, length: 40 }, { tip: 2, butt: 3, limits })).warnings).toEqual([]);
  expect(
    answer(cutShaft({ weight: 110, length: 40 }, { tip: 2.5, butt: 3.5, limits })).warnings,
  ).toHaveLength(3);
});

test("a shaft cut to length by its weight alone needs a weight and both lengths", () => {
  for (const [figures, name] of [
    [[0, 40, 36], "rawWeight"],
    [[120, 0, 36], "rawLength"],
    [[120, 40, 0], "cutLength"],
  ] as [[number, number, number], string][]) {
    expect(cutWeight(...figures)).toMatchObject({
      kind: "invalid",
      message: expect.stringContaining(`${name} is 0`),
    });
  }
});
