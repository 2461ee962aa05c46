import { expect, test } from "vitest";
import { modifiedZScores, outlierCutoff } from "../../src/stats/modified-z-score.ts";
import { uranium } from "./published-data.ts";

// NIST/SEMATECH e-Handbook 1.3.5.17.1; scores recomputed with 40-digit arithmetic to six decimals.
const published = [-1.396452, -1.247317, -0.79991, -0.372839, 0.372839, 0.393176, 0.54909, 29.962714];

test("the modified z-scores of the uranium data agree with the handbook's to the printed decimals", () => {
  const scores = modifiedZScores(uranium) as number[];
  expect(scores.map((score) => Number(score.toFixed(6)))).toEqual(published);
  expect(scores.filter((score) => Math.abs(score) > outlierCutoff)).toHaveLength(1);
});

test("a missing value keeps its place with a score of NaN and counts for nothing", () => {
  const scores = modifiedZScores([uranium[0]!, Number.NaN, ...uranium.slice(1)]) as number[];
  expect(scores[1]).toBeNaN();
  expect(scores.filter((score) => !Number.isNaN(score))).toEqual(modifiedZScores(uranium));
});

// By hand: median 5, mean absolute deviation (0 + 0 + 0 + 0 + 10) / 5 = 2, score 10 / (1.253314 * 2).
test("when more than half of the values are equal the mean absolute deviation stands in", () => {
  const scores = modifiedZScores([5, 5, 5, 5, 15]) as number[];
  expect(scores.slice(0, 4)).toEqual([0, 0, 0, 0]);
  expect(scores[4]).toBeCloseTo(10 / 2.506628, 12);
});

test("equal values all score nought, and no values give a sentence", () => {
  expect(modifiedZScores([4, 4, 4])).toEqual([0, 0, 0]);
  expect(modifiedZScores([])).toMatchObject({ kind: "unavailable" });
});

test("a missing or endless value among equal ones scores NaN, and values too far apart give a sentence", () => {
  expect(modifiedZScores([4, Number.NaN, 4, Number.POSITIVE_INFINITY, 4])).toEqual([
    0,
    Number.NaN,
    0,
    Number.NaN,
    0,
  ]);
  expect(modifiedZScores([-1.7e308, 1.7e308, 1.7e308])).toMatchObject({ kind: "unavailable" });
});
