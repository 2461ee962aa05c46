import { expect, test } from "vitest";
import { type MeanDifference, welch } from "../../src/stats/welch.ts";
import { expectClose } from "./expect-close.ts";
import { autoJapan, autoUs, setosa, sleepFirst, sleepSecond, versicolor } from "./published-data.ts";

const cases: [string, number[], number[], Record<string, number>][] = [
  [
    "NIST/SEMATECH e-Handbook AUTO83B",
    autoUs,
    autoJapan,
    {
      difference: -10.33643434497484,
      standardError: 0.7984100231368803,
      t: -12.946273274932,
      df: 136.8749766725833,
      p: 1.570854784295468e-25,
      low: -11.91524809463759,
      high: -8.75762059531208,
    },
  ],
  [
    "Fisher 1936, iris sepal length",
    setosa,
    versicolor,
    {
      difference: -0.93,
      standardError: 0.08839475466938762,
      t: -10.52098626754911,
      df: 86.53800179765496,
      p: 3.746742613983823e-17,
      low: -1.105707372721081,
      high: -0.7542926272789192,
    },
  ],
  [
    "Student 1908, sleep",
    sleepFirst,
    sleepSecond,
    {
      difference: -1.58,
      standardError: 0.849091017238762,
      t: -1.860813467486853,
      df: 17.77647351617849,
      p: 0.07939414018735814,
      low: -3.365483230711711,
      high: 0.205483230711711,
    },
  ],
];

// The figures: recomputed from the published data with 40-digit arithmetic.
test.each(cases)("Welch's difference of means agrees with %s", (_source, first, second, published) => {
  const found = welch(first, second) as MeanDifference;
  for (const [key, value] of Object.entries(published)) {
    expectClose(found[key as keyof MeanDifference], value, 2e-12);
  }
});

test("the difference is the first mean minus the second", () => {
  const there = welch([3, 4, 5], [1, 2, 4]) as MeanDifference;
  const back = welch([1, 2, 4], [3, 4, 5]) as MeanDifference;
  expect(there.difference).toBeGreaterThan(0);
  expect(back.difference).toBe(-there.difference);
  expect(back.low).toBe(-there.high);
  expect(back.p).toBe(there.p);
});

test("one value in a group, or no spread in either, gives a sentence and no limits", () => {
  expect(welch([1, Number.NaN], [2, 3])).toMatchObject({
    kind: "unavailable",
    message: expect.stringContaining("1 and 2"),
  });
  expect(welch([1, 1], [2, 2])).toMatchObject({ kind: "unavailable" });
});

test("a confidence of 95 is refused by name, and no spread is told apart from figures out of range", () => {
  expect(welch([1, 2], [3, 5], 95)).toMatchObject({
    kind: "invalid",
    message: expect.stringContaining("confidence"),
  });
  expect(welch([1, 1], [2, 2])).toMatchObject({ message: expect.stringContaining("the same") });
});

// By hand: variances 2 and 8 of two values each leave a standard error of sqrt(5); Satterthwaite's degrees of freedom
// are 5^2 / (1 + 16).
test("two values in each group are enough", () => {
  const found = welch([1, 3], [4, 8]) as MeanDifference;
  expectClose(found.standardError, Math.sqrt(5));
  expectClose(found.df, 25 / 17);
});
