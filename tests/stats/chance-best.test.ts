import { expect, test } from "vitest";
import { chanceBest, type Goal, type GroupMean, tUpperTail } from "../../src/stats/index.ts";
import { expectClose } from "./expect-close.ts";

const five: GroupMean[] = [
  { n: 5, mean: 250, sd: 6 },
  { n: 6, mean: 254, sd: 5 },
  { n: 4, mean: 248, sd: 7 },
  { n: 7, mean: 255, sd: 6 },
  { n: 5, mean: 252, sd: 5 },
];
const sumOf = (chances: number[]) => chances.reduce((sum, chance) => sum + chance, 0);

// Drawn with numpy 2.4.6: means as shifted, scaled t with the pooled or the own spread, the best of each draw
// counted. Separate: default_rng(1), ten million draws; pooled: default_rng(2), thirty million.
const drawn: [Goal, "pooled" | "separate", number, number[]][] = [
  ["high", "pooled", 3e7, [0.02929313333, 0.31877473333, 0.01058076667, 0.53066553333, 0.11068583333]],
  ["low", "pooled", 3e7, [0.26005006667, 0.0177838, 0.62972133333, 0.0059067, 0.0865381]],
  [252, "pooled", 3e7, [0.2191983, 0.2291521, 0.09940013333, 0.1421167, 0.31013276667]],
  ["high", "separate", 1e7, [0.0554873, 0.2908016, 0.0574127, 0.4885679, 0.1077305]],
  ["low", "separate", 1e7, [0.2841116, 0.024812, 0.5767738, 0.0156299, 0.0986727]],
  [252, "separate", 1e7, [0.1979472, 0.2281107, 0.0952715, 0.1402311, 0.3384395]],
];

test.each(drawn)("the chance of %s with %s spread agrees with %d draws", (goal, spread, draws, counted) => {
  const found = chanceBest(five, goal, spread) as number[];
  counted.forEach((share, i) => {
    const error = Math.sqrt((share * (1 - share)) / draws);
    expect(Math.abs(found[i]! - share)).toBeLessThan(4 * error);
  });
});

test("the chances sum to one, alike or far apart, with few values or many", () => {
  const sets: GroupMean[][] = [
    five,
    [
      { n: 2, mean: 0, sd: 0.001 },
      { n: 2, mean: 10000, sd: 10 },
      { n: 50, mean: 5000, sd: 100000 },
    ],
    [
      { n: 1000, mean: 250, sd: 6 },
      { n: 3, mean: 251, sd: 6 },
    ],
  ];
  for (const groups of sets) {
    for (const goal of ["high", "low", 240] as const) {
      for (const spread of ["pooled", "separate"] as const) {
        expect(Math.abs(sumOf(chanceBest(groups, goal, spread) as number[]) - 1)).toBeLessThan(1e-9);
      }
    }
  }
});

// Box and Tiao 1973: the difference of two means is a shifted, scaled t.
test("between two groups with a common spread the chance is a tail of Student's t", () => {
  const two = [
    { n: 4, mean: 250, sd: 6 },
    { n: 6, mean: 254, sd: 5 },
  ];
  const pooled = Math.sqrt((3 * 36 + 5 * 25) / 8);
  const t = 4 / (pooled * Math.sqrt(1 / 4 + 1 / 6));
  const found = chanceBest(two, "high", "pooled") as number[];
  expectClose(found[0], tUpperTail(t, 8), 1e-11);
});

// Sheppard's orthant probability, 1/4 + arcsin(rho) / (2 pi), holds for the multivariate t about equal means.
test("among three equal means of unequal size the chances are Sheppard's", () => {
  const sizes = [3, 9, 5];
  const found = chanceBest(
    sizes.map((n) => ({ n, mean: 1, sd: 2 })),
    "high",
    "pooled",
  ) as number[];
  const [a, b, c] = sizes.map((n) => 1 / n) as [number, number, number];
  const rho = a / Math.sqrt((a + b) * (a + c));
  expectClose(found[0], 0.25 + Math.asin(rho) / (2 * Math.PI), 1e-11);
});

test("identical groups have equal chances whatever the goal", () => {
  const same = Array.from({ length: 4 }, () => ({ n: 3, mean: 250, sd: 6 }));
  for (const goal of ["high", "low", 240, 250] as const) {
    for (const spread of ["pooled", "separate"] as const) {
      for (const chance of chanceBest(same, goal, spread) as number[]) expectClose(chance, 0.25, 1e-11);
    }
  }
});

test("the lowest is the highest with signs turned, and a far target is the same as low or high", () => {
  const turned = five.map((group) => ({ ...group, mean: -group.mean }));
  expect(chanceBest(five, "low", "separate")).toEqual(chanceBest(turned, "high", "separate"));
  const near = chanceBest(five, 300, "pooled") as number[];
  (chanceBest(five, "high", "pooled") as number[]).forEach((chance, i) => {
    expect(near[i]).toBeCloseTo(chance, 9);
  });
});

test("a single value takes part with a pooled spread and not with its own", () => {
  const groups = [
    { n: 1, mean: 255, sd: null },
    { n: 4, mean: 250, sd: 5 },
  ];
  expect((chanceBest(groups, "high", "pooled") as number[])[0]).toBeGreaterThan(0.5);
  expect(chanceBest(groups, "high", "separate")).toMatchObject({ kind: "unavailable" });
  expect(chanceBest([groups[0]!, groups[0]!], "high", "pooled")).toMatchObject({ kind: "unavailable" });
});

test("one group is the best there is, none is a sentence, and odd figures are refused by place", () => {
  expect(chanceBest([five[0]!], "high", "pooled")).toEqual([1]);
  expect(chanceBest([], "high", "pooled")).toMatchObject({ kind: "unavailable" });
  expect(chanceBest([five[0]!, { n: 3, mean: Number.NaN, sd: 1 }], "high", "pooled")).toMatchObject({
    kind: "invalid",
    message: expect.stringContaining("Group 2"),
  });
  expect(chanceBest(five, Number.NaN, "pooled")).toMatchObject({ kind: "invalid" });
});
