import { expect, test } from "vitest";
import {
  type Dunnett,
  dunnett,
  dunnettFactor,
  dunnettUpperTail,
  normalUpperTail,
  tQuantile,
  tUpperTail,
} from "../../src/stats/index.ts";
import { expectClose } from "./expect-close.ts";
import { bloodCounts } from "./published-data.ts";

// Dunnett 1964, Biometrics 20, 482-491, table II: two-sided, joint confidence 95 %, equal sizes. Quoted from memory
// and confirmed by the independent quadrature below.
const table = [
  { groups: 2, df: 5, factor: "3.03" },
  { groups: 3, df: 5, factor: "3.29" },
  { groups: 2, df: 10, factor: "2.57" },
  { groups: 3, df: 10, factor: "2.76" },
  { groups: 4, df: 10, factor: "2.89" },
  { groups: 5, df: 20, factor: "2.73" },
  { groups: 2, df: Number.POSITIVE_INFINITY, factor: "2.21" },
  { groups: 3, df: Number.POSITIVE_INFINITY, factor: "2.35" },
  { groups: 5, df: Number.POSITIVE_INFINITY, factor: "2.51" },
];

test.each(table)("the factor for $groups groups and $df degrees of freedom is the table's", (row) => {
  const sizes = new Array<number>(row.groups).fill(4);
  expect(dunnettFactor(sizes, 4, row.df, 0.95).toFixed(2)).toBe(row.factor);
});

// Independent quadrature: 400 by 400 Gauss-Legendre points with numpy and scipy 1.17.1, from the multivariate t
// of Dunnett 1955, without this project's change of variables.
test("upper tails agree with an independent quadrature, unequal sizes included", () => {
  expectClose(dunnettUpperTail(3, [4, 5], 6, 12), 0.020673760395201544, 1e-12);
  expectClose(dunnettUpperTail(8, [4, 5], 6, 12), 7.318787766851052e-6, 1e-10);
  expectClose(dunnettUpperTail(2.5, [3, 10, 7, 2], 1, 20), 0.049872594930077965, 1e-12);
  expectClose(dunnettUpperTail(2.734677157429405, [5, 5, 5, 5, 5], 5, 20), 0.05, 1e-12);
});

// The worked example of Dunnett 1955: scipy 1.17.1, dunnett, by randomised integration, prints p 0.620 and 0.006 and
// limits -1.257 to 2.557 and 0.839 to 4.417, sure to about the third decimal.
test("the blood counts of Dunnett's paper agree with a reference library", () => {
  const found = dunnett(bloodCounts, 0) as Dunnett;
  const [control, drugA, drugB] = found.differences;
  expect(control).toBeNull();
  expectClose(drugA!.difference, 0.65, 1e-14);
  expect(Math.abs(drugA!.p - 0.62)).toBeLessThan(1e-3);
  expect(Math.abs(drugA!.low + 1.257)).toBeLessThan(2e-3);
  expect(Math.abs(drugA!.high - 2.557)).toBeLessThan(2e-3);
  expect(Math.abs(drugB!.p - 0.006)).toBeLessThan(1e-3);
  expect(Math.abs(drugB!.low - 0.839)).toBeLessThan(2e-3);
  expect(Math.abs(drugB!.high - 4.417)).toBeLessThan(2e-3);
});

test("for one group beside the baseline the factor is Student's t", () => {
  expect(dunnettFactor([7], 3, 8, 0.95)).toBeCloseTo(tQuantile(0.975, 8), 14);
  expect(dunnettUpperTail(60, [7], 3, 8.5)).toBe(2 * tUpperTail(60, 8.5));
  expect(dunnettUpperTail(7, [7], 3, Infinity)).toBe(2 * normalUpperTail(7));
});

// Dunnett and Sobel 1955: never more than Bonferroni allows, never less than one comparison alone.
test("adjusted probabilities lie between one comparison's and Bonferroni's, down to 1e-16", () => {
  for (const t of [0.5, 2, 5, 20, 60]) {
    const alone = dunnettUpperTail(t, [4], 6, 12);
    const joint = dunnettUpperTail(t, [4, 5, 3], 6, 12);
    expect(joint).toBeGreaterThan(alone);
    expect(joint).toBeLessThanOrEqual(3 * alone);
  }
});

test("a limit touches nought exactly when p is one minus the confidence", () => {
  const found = dunnett(bloodCounts, 0) as Dunnett;
  const drugB = found.differences[2]!;
  const touching = dunnett(bloodCounts, 0, 1 - drugB.p) as Dunnett;
  expect(Math.abs(touching.differences[2]!.low)).toBeLessThan(1e-9);
});

test("a baseline that is not there and groups of one value each give a sentence", () => {
  expect(dunnett(bloodCounts, 3)).toMatchObject({ kind: "invalid", message: expect.stringContaining("3") });
  expect(dunnett([[1], [2]], 0)).toMatchObject({ kind: "unavailable" });
  expect(dunnett([[1, 2], []], 0)).toMatchObject({ kind: "unavailable" });
});

// With one degree of freedom t is Cauchy. By hand: a spread of sqrt(2), a standard error of sqrt(3), so t is sqrt(3).
test("one value more than there are groups is enough", () => {
  const found = dunnett([[1, 3], [5]], 0) as Dunnett;
  expect(found.df).toBe(1);
  expectClose(found.differences[1]!.p, 1 / 3);
});

test("a confidence of 95, a baseline alone and single values each hear what is wrong", () => {
  const wrong: [ReturnType<typeof dunnett>, string, string][] = [
    [dunnett(bloodCounts, 0, 95), "invalid", "confidence is 95"],
    [dunnett(bloodCounts, 3), "invalid", "0 to 2"],
    [dunnett([[1, 2, 4]], 0), "unavailable", "second group"],
    [dunnett([[1], [2]], 0), "unavailable", "single value"],
  ];
  for (const [outcome, kind, words] of wrong) {
    expect(outcome).toMatchObject({ kind, message: expect.stringContaining(words) });
  }
});
