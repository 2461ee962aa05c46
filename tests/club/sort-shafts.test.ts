import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sortShafts } from "../../src/club/sort-shafts.ts";
import { QUICK } from "../quick.ts";
import { answer } from "./answer.ts";

/** Least total over every way to give shafts to targets: the check that needs no cleverness. */
function bruteForce(
  shafts: number,
  targets: number,
  cost: (target: number, shaft: number) => number,
): number {
  const used = new Set<number>();
  const from = (target: number): number => {
    if (target === targets) return 0;
    let least = Number.POSITIVE_INFINITY;
    for (let shaft = 0; shaft < shafts; shaft += 1) {
      if (used.has(shaft)) continue;
      used.add(shaft);
      least = Math.min(least, cost(target, shaft) + from(target + 1));
      used.delete(shaft);
    }
    return least;
  };
  return from(0);
}

const grams = fc.integer({ min: 500, max: 1300 }).map((tenths) => tenths / 10);
const cycles = fc.integer({ min: 240, max: 340 });
const bin = fc.integer({ min: 1, max: 8 }).chain((shafts) =>
  fc.record({
    weights: fc.array(grams, { minLength: shafts, maxLength: shafts }),
    targets: fc.array(grams, { minLength: 1, maxLength: shafts }),
    measured: fc.array(cycles, { minLength: shafts, maxLength: shafts }),
    wanted: fc.array(cycles, { minLength: shafts, maxLength: shafts }),
  }),
);

describe("sortShafts(weights, targets)", () => {
  test("is as good as trying every way, up to 8 shafts, and uses no shaft twice", () => {
    fc.assert(
      fc.property(bin, ({ weights, targets }) => {
        const { choices, total } = answer(sortShafts(weights, targets));
        const least = bruteForce(weights.length, targets.length, (t, s) => (weights[s]! - targets[t]!) ** 2);
        expect(total).toBeCloseTo(least, 8);
        expect(choices.reduce((sum, choice) => sum + choice.difference ** 2, 0)).toBeCloseTo(total, 8);
        expect(new Set(choices.map((choice) => choice.shaft)).size).toBe(targets.length);
      }),
      { numRuns: 60 },
    );
  });

  test("takes a shaft exactly at the tolerance, though binary fractions put it a hair beyond", () => {
    // By hand: 108.4 is 0.3 over 108.1, and 107.8 is 0.3 under.
    expect(answer(sortShafts([108.4], [108.1], { tolerance: 0.3 })).outOfTolerance).toEqual([]);
    expect(answer(sortShafts([107.8], [108.1], { tolerance: 0.3 })).outOfTolerance).toEqual([]);
    expect(answer(sortShafts([108.5], [108.1], { tolerance: 0.3 })).outOfTolerance).toEqual([1]);
  });

  test("refuses more shafts and targets than a table of all pairs can hold, instead of failing", () => {
    const grams = (count: number) => new Array<number>(count).fill(100);
    expect(sortShafts(grams(200_000), grams(100_000))).toMatchObject({
      kind: "unavailable",
      message: expect.stringMatching(
        /^weights has 200000 shafts for 100000 targets, more than can be sorted/,
      ),
    });
  });

  test("answers in the targets' order, with shafts numbered from 1", () => {
    // By hand: 106 g is nearest the second shaft, 100 g the third; the 90 g shaft stays in the bin.
    const sorting = answer(sortShafts([90, 106.5, 99], [106, 100], { tolerance: 0.5 }));
    expect(sorting.choices).toEqual([
      { shaft: 2, weight: 106.5, difference: 0.5, within: true },
      { shaft: 3, weight: 99, difference: -1, within: false },
    ]);
    expect(sorting).toMatchObject({ total: 1.25, unused: [1], outOfTolerance: [3] });
  });

  test("beats giving each target its nearest shaft in turn", () => {
    // By hand: in turn, 100 takes 101 and leaves 80 for 103: 1 + 529. Best: 80 for 100 and 101 for 103: 400 + 4.
    expect(answer(sortShafts([101, 80], [100, 103])).total).toBe(404);
  });

  test("says how many shafts are missing", () => {
    expect(sortShafts([100, 101], [100, 101, 102, 103, 104])).toEqual({
      kind: "unavailable",
      message: "weights has 2 shafts for 5 targets; 3 more are needed.",
    });
  });

  test.each([
    [[], [100], "weights is empty"],
    [[100], [], "targets is empty"],
    [[100, Number.NaN], [100], "no number in place 2"],
    [[100, 99], [-5], "-5 in place 1"],
  ])("refuses %j for %j", (weights, targets, message) => {
    expect(sortShafts(weights, targets)).toMatchObject({ message: expect.stringContaining(message) });
  });

  test.skipIf(QUICK)(
    "deals 500 shafts out to 40 sets of 8, each shaft once, by weight and by frequency too",
    () => {
      const weights = Array.from({ length: 500 }, (_, index) => 95 + ((index * 7919) % 500) / 25);
      const measured = weights.map((_, index) => 290 + ((index * 104729) % 400) / 10);
      const targets = Array.from({ length: 320 }, (_, index) => 98 + (index % 8) * 2);
      const wanted = targets.map((_, index) => 295 + (index % 8) * 4);
      const byWeight = answer(sortShafts(weights, targets));
      const byBoth = answer(sortShafts(weights, targets, { frequencies: { measured, targets: wanted } }));
      expect(new Set(byWeight.choices.map((choice) => choice.shaft)).size).toBe(320);
      expect(new Set(byBoth.choices.map((choice) => choice.shaft)).size).toBe(320);
    },
  );
});

describe("sortShafts(weights, targets, { frequencies })", () => {
  test("is as good as trying every way with both figures, up to 8 shafts", () => {
    fc.assert(
      fc.property(
        bin,
        fc.constantFrom(0, 0.5, 2),
        ({ weights, targets, measured, wanted }, gramsPerCycle) => {
          const goals = wanted.slice(0, targets.length);
          const { total } = answer(
            sortShafts(weights, targets, { frequencies: { measured, targets: goals, gramsPerCycle } }),
          );
          const cost = (t: number, s: number) =>
            (weights[s]! - targets[t]!) ** 2 + (gramsPerCycle * (measured[s]! - goals[t]!)) ** 2;
          expect(total).toBeCloseTo(bruteForce(weights.length, targets.length, cost), 8);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("comes to the same total as order alone where frequency counts for nothing, for bins too great to try", () => {
    const figures = (length: number) => fc.array(grams, { minLength: length, maxLength: length });
    fc.assert(
      fc.property(figures(60), figures(40), (weights, targets) => {
        const frequencies = { measured: weights, targets, gramsPerCycle: 0 };
        const byBoth = answer(sortShafts(weights, targets, { frequencies }));
        expect(byBoth.total).toBeCloseTo(answer(sortShafts(weights, targets)).total, 6);
      }),
      { numRuns: 30 },
    );
  });

  test("marks a shaft whose frequency is out of tolerance", () => {
    const frequencies = { measured: [300, 320], targets: [301], gramsPerCycle: 0, tolerance: 0.5 };
    expect(answer(sortShafts([100, 100], [100], { frequencies }))).toMatchObject({
      choices: [{ shaft: 1, frequencyDifference: -1, within: false }],
      outOfTolerance: [1],
    });
  });

  test("refuses frequencies that are not one a shaft and one a target", () => {
    const frequencies = { measured: [300], targets: [301] };
    expect(sortShafts([100, 101], [100], { frequencies })).toMatchObject({
      message: expect.stringContaining("one a shaft (2)"),
    });
  });
});

describe("sortShafts refuses by name", () => {
  const frequencies = { measured: [300, 310], targets: [301] };
  test.each<[string, Parameters<typeof sortShafts>[2]]>([
    ["tolerance is -1", { tolerance: -1 }],
    ["gramsPerCycle is -1", { frequencies: { ...frequencies, gramsPerCycle: -1 } }],
    ["frequency tolerance is -1", { frequencies: { ...frequencies, tolerance: -1 } }],
    ["one a target (1)", { frequencies: { ...frequencies, targets: [301, 302] } }],
    [
      "measured frequencies has no number in place 1",
      { frequencies: { ...frequencies, measured: [Number.NaN, 310] } },
    ],
    ["target frequencies has -301 in place 1", { frequencies: { ...frequencies, targets: [-301] } }],
  ])("what is wrong: %s", (words, options) => {
    expect(sortShafts([100, 101], [100], options)).toMatchObject({
      kind: "invalid",
      message: expect.stringContaining(words),
    });
  });

  test("a weight beyond computing, and takes the least and the greatest there are", () => {
    expect(sortShafts([100, 1e10], [100])).toMatchObject({ message: expect.stringContaining("in place 2") });
    expect(answer(sortShafts([1e9, 1e-9], [1e-9, 1e9])).total).toBe(0);
  });
});

test("a shaft exactly at its tolerance of frequency is within", () => {
  const frequencies = { measured: [300], targets: [301], tolerance: 1 };
  expect(answer(sortShafts([100], [100], { frequencies })).outOfTolerance).toEqual([]);
});
