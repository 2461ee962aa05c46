import { expect, test } from "vitest";
import { holm } from "../../src/stats/holm.ts";
import { expectClose } from "./expect-close.ts";

const cases = [
  // Holm 1979, the worked example of four hypotheses.
  { p: [0.01, 0.04, 0.03, 0.005], adjusted: [0.03, 0.06, 0.06, 0.02] },
  // Benjamini and Hochberg 1995, table of fifteen probabilities.
  {
    p: [
      0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528,
      0.759, 1,
    ],
    adjusted: [0.0015, 0.0056, 0.0247, 0.114, 0.2211, 0.278, 0.278, 0.278, 0.3213, 1, 1, 1, 1, 1, 1],
  },
];

test.each(cases)("Holm's adjusted probabilities agree with published examples", ({ p, adjusted }) => {
  const found = holm(p) as number[];
  expect(found).toHaveLength(adjusted.length);
  found.forEach((value, i) => {
    expectClose(value, adjusted[i]!);
  });
});

test("Holm refuses what is no probability and answers nothing for nothing", () => {
  expect(holm([0.5, 1.2])).toMatchObject({ kind: "invalid", message: expect.stringContaining("1.2") });
  expect(holm([0.5, Number.NaN])).toMatchObject({ kind: "invalid" });
  expect(holm([])).toEqual([]);
});

test("Holm takes 0 and 1 as they are and refuses what lies below", () => {
  expect(holm([0, 1])).toEqual([0, 1]);
  expect(holm([-0.1, 0.5])).toMatchObject({ kind: "invalid", message: expect.stringContaining("-0.1") });
});
