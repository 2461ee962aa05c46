import { expect, test } from "vitest";
import { welchOfSummaries } from "../../src/stats/welch-of-summaries.ts";

test("Student's sleep data give Welch's limits from counts, means and spreads alone", () => {
  // Student 1908, Biometrika 6, 1-25, as R's sleep set: means 0.75 and 2.33, sample SDs 1.789010 and 2.002249;
  // t.test(extra ~ group): t = -1.8608, df = 17.776, p = 0.07939, -3.3654832 to 0.2054832.
  const found = welchOfSummaries({ n: 10, mean: 0.75, sd: 1.78901 }, { n: 10, mean: 2.33, sd: 2.002249 });
  expect(found).toMatchObject({
    difference: expect.closeTo(-1.58, 10),
    df: expect.closeTo(17.776, 3),
    p: expect.closeTo(0.07939, 5),
    low: expect.closeTo(-3.365483, 5),
    high: expect.closeTo(0.205483, 5),
  });
});

test("one value, or no spread at all, gives no limits", () => {
  expect(welchOfSummaries({ n: 1, mean: 1, sd: 0 }, { n: 5, mean: 2, sd: 1 })).toMatchObject({
    kind: "unavailable",
  });
  expect(welchOfSummaries({ n: 4, mean: 1, sd: 0 }, { n: 5, mean: 2, sd: 0 })).toMatchObject({
    kind: "unavailable",
  });
  expect(welchOfSummaries({ n: 4, mean: Number.NaN, sd: 1 }, { n: 5, mean: 2, sd: 0 })).toMatchObject({
    kind: "invalid",
  });
});

test("spreads below 0 or without end are refused, and one group may have no spread", () => {
  const sound = { n: 5, mean: 2, sd: 1 };
  for (const sd of [-1, Number.POSITIVE_INFINITY, Number.NaN]) {
    expect(welchOfSummaries({ n: 4, mean: 1, sd }, sound)).toMatchObject({ kind: "invalid" });
    expect(welchOfSummaries(sound, { n: 4, mean: 1, sd })).toMatchObject({ kind: "invalid" });
  }
  expect(welchOfSummaries(sound, { n: Number.NaN, mean: 1, sd: 1 })).toMatchObject({ kind: "unavailable" });
  // With one spread of 0 the degrees of freedom are those of the other group, 4.
  expect(welchOfSummaries(sound, { n: 2, mean: 1, sd: 0 })).toMatchObject({
    df: expect.closeTo(4, 12),
    standardError: expect.closeTo(Math.sqrt(1 / 5), 12),
  });
});

test("too few values and no spread are told apart from figures out of range", () => {
  const sound = { n: 5, mean: 2, sd: 1 };
  const few = { kind: "unavailable", message: expect.stringContaining("two values") };
  expect(welchOfSummaries({ n: 1, mean: 1, sd: 1 }, sound)).toMatchObject(few);
  expect(welchOfSummaries(sound, { n: 1, mean: 1, sd: 1 })).toMatchObject(few);
  expect(welchOfSummaries({ n: 4, mean: 1, sd: 0 }, { n: 5, mean: 2, sd: 0 })).toMatchObject({
    message: expect.stringContaining("Nothing varies"),
  });
});
