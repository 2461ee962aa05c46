import { describe, expect, it } from "vitest";
import { NO_DIFFERENCE, PRIOR_NODES } from "../../src/stats/build-prior.ts";
import { chanceBest, type Goal, type GroupMean, seededRandom } from "../../src/stats/index.ts";
import { QUICK } from "../quick.ts";

const four: GroupMean[] = [
  { n: 3, mean: 158.5, sd: 5.4 },
  { n: 6, mean: 162.7, sd: 3.9 },
  { n: 5, mean: 160.3, sd: 3.5 },
  { n: 6, mean: 156.1, sd: 4.2 },
];

const RATIOS = [{ ratio: 0, weight: NO_DIFFERENCE }, ...PRIOR_NODES];

/** Which of the true means wins, for one draw of them. */
function winner(means: readonly number[], goal: Goal): number {
  const worth = means.map((mean) =>
    goal === "high" ? mean : goal === "low" ? -mean : -Math.abs(mean - goal),
  );
  return worth.indexOf(Math.max(...worth));
}

/**
 * The pooled model drawn at random, step by step as it is told: a ratio of spreads by its posterior weight (Box and
 * Tiao 1973, section 5.2), the shared variance as a sum of squares over chi-square, the common mean, then the means.
 */
function drawPooled(groups: readonly GroupMean[], goal: Goal, draws: number): number[] {
  const random = seededRandom(20);
  const within = groups.reduce((sum, { n, sd }) => sum + (n > 1 ? (n - 1) * sd! ** 2 : 0), 0);
  const df = groups.reduce((sum, { n }) => sum + n - 1, 0) + groups.length - 1;
  const fits = RATIOS.map(({ ratio, weight }) => {
    const variances = groups.map(({ n }) => ratio ** 2 + 1 / n);
    const precision = variances.reduce((sum, v) => sum + 1 / v, 0);
    const common = groups.reduce((sum, { mean }, i) => sum + mean / variances[i]!, 0) / precision;
    const squares =
      within + groups.reduce((sum, { mean }, i) => sum + (mean - common) ** 2 / variances[i]!, 0);
    const height = variances.reduce((h, v) => h / Math.sqrt(v), 1) / Math.sqrt(precision);
    return { ratio, precision, common, squares, height: weight * height * (squares / within) ** (-df / 2) };
  });
  const all = fits.reduce((sum, { height }) => sum + height, 0);
  const counts = groups.map(() => 0);
  for (const { ratio, precision, common, squares, height } of fits) {
    const share = Math.round((draws * height) / all);
    if (ratio === 0) {
      for (let i = 0; i < counts.length; i++) counts[i]! += share / counts.length;
      continue;
    }
    const lean = groups.map(({ n }) => ratio ** 2 / (ratio ** 2 + 1 / n));
    for (let d = 0; d < share; d++) {
      // Chi-square with an even number of degrees of freedom is twice a sum of exponentials.
      let product = 1;
      for (let j = 1; j < df; j += 2) product *= 1 - random.uniform();
      const chi = -2 * Math.log(product) + (df % 2 === 1 ? random.normal() ** 2 : 0);
      const spread = Math.sqrt(squares / chi);
      const middle = common + (random.normal() * spread) / Math.sqrt(precision);
      const means = groups.map(
        ({ n, mean }, i) =>
          lean[i]! * mean + (1 - lean[i]!) * middle + random.normal() * spread * Math.sqrt(lean[i]! / n),
      );
      counts[winner(means, goal)]! += 1;
    }
  }
  const total = counts.reduce((a, b) => a + b, 0);
  return counts.map((count) => count / total);
}

/** The separate model by importance: means drawn from the prior, each draw weighed by how well it fits. */
function weighSeparate(groups: readonly GroupMean[], goal: Goal, draws: number) {
  const random = seededRandom(21);
  const df = groups.reduce((sum, { n }) => sum + n - 1, 0);
  const typical = Math.sqrt(groups.reduce((sum, { n, sd }) => sum + (n - 1) * sd! ** 2, 0) / df);
  const cumulative = RATIOS.map(
    (
      (sum) =>
      ({ weight }) =>
        (sum += weight)
    )(0),
  );
  const sums = groups.map(() => 0);
  let total = 0;
  let squares = 0;
  for (let d = 0; d < draws; d++) {
    const place = random.uniform() * cumulative.at(-1)!;
    const { ratio } = RATIOS[cumulative.findIndex((sum) => place < sum)]!;
    const common = 159.4 + 40 * (random.uniform() - 0.5);
    const means = groups.map(() => common + ratio * typical * random.normal());
    let weight = 1;
    groups.forEach(({ n, mean, sd }, i) => {
      weight *= (1 + (n * (means[i]! - mean) ** 2) / sd! ** 2 / (n - 1)) ** (-n / 2);
    });
    total += weight;
    squares += weight * weight;
    if (ratio === 0)
      groups.forEach((_, i) => {
        sums[i]! += weight / groups.length;
      });
    else sums[winner(means, goal)]! += weight;
  }
  return { shares: sums.map((sum) => sum / total), effective: total ** 2 / squares };
}

describe("chanceBest(groups, goal, spread)", () => {
  it.skipIf(QUICK)(
    "agrees with ten million draws of the pooled model within Monte Carlo error",
    () => {
      const draws = 1e7;
      const counted = drawPooled(four, "high", draws);
      const found = chanceBest(four, "high", "pooled") as number[];
      counted.forEach((share, i) => {
        expect(Math.abs(found[i]! - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / draws));
      });
    },
    120_000,
  );

  it.skipIf(QUICK).each<[Goal]>([["low"], [160]])(
    "agrees with a million draws of the pooled model for the goal %s",
    (goal) => {
      const counted = drawPooled(four, goal, 1e6);
      const found = chanceBest(four, goal, "pooled") as number[];
      counted.forEach((share, i) => {
        expect(Math.abs(found[i]! - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / 1e6));
      });
    },
    60_000,
  );

  it.skipIf(QUICK).each<[Goal]>([["high"], [160]])(
    "agrees with weighed draws of the separate model for the goal %s",
    (goal) => {
      const { shares, effective } = weighSeparate(four, goal, 2e6);
      expect(effective).toBeGreaterThan(5000);
      const found = chanceBest(four, goal, "separate") as number[];
      shares.forEach((share, i) => {
        expect(Math.abs(found[i]! - share)).toBeLessThan(4.5 * Math.sqrt((share * (1 - share)) / effective));
      });
    },
    60_000,
  );

  // The same two models by dense quadrature in Python with numpy and scipy 1.17.1, from their description: ratios as in
  // build-prior.ts, 80 Gauss points for the spread, 40 for the common mean, 160 for the means; separate spreads on even
  // grids of 4001 by 141.
  const three: GroupMean[] = [
    { n: 2, mean: 250, sd: 6 },
    { n: 4, mean: 256, sd: 3 },
    { n: 7, mean: 252, sd: 9 },
  ];
  // Distances fold at the target, where seven points for the common mean are good for three digits; for separate spreads
  // its points reach five standard errors, and two values a group have some chance left beyond.
  const references: [string, GroupMean[], Goal, "pooled" | "separate", number[], number][] = [
    [
      "four pooled, highest",
      four,
      "high",
      "pooled",
      [0.10432441634898841, 0.6796843086856852, 0.19296369950797188, 0.02302757545735446],
      1e-5,
    ],
    [
      "three pooled, highest",
      three,
      "high",
      "pooled",
      [0.22938626992391603, 0.5478429651087314, 0.2227707649673525],
      1e-5,
    ],
    [
      "three pooled, nearest",
      three,
      252.5,
      "pooled",
      [0.28632944844765534, 0.28499485056168017, 0.42867570099066443],
      1e-3,
    ],
    [
      "four pooled, nearest",
      four,
      160,
      "pooled",
      [0.2679716331290167, 0.24333243553789516, 0.3892687076681443, 0.0994272236649438],
      1e-3,
    ],
    [
      "three of equal counts pooled, nearest",
      [
        { n: 3, mean: 158, sd: 5 },
        { n: 3, mean: 162.5, sd: 4 },
        { n: 3, mean: 160.8, sd: 4.4 },
      ],
      160,
      "pooled",
      [0.3562678, 0.29037767, 0.35335453],
      1e-3,
    ],
    [
      "three separate, highest",
      three,
      "high",
      "separate",
      [0.19030122771215774, 0.6202243794278914, 0.1894743928599507],
      3e-4,
    ],
    [
      "three separate, nearest",
      three,
      252.5,
      "separate",
      [0.3432667165854665, 0.22747486488135876, 0.4292584185331748],
      3e-4,
    ],
    [
      "four separate, nearest",
      four,
      160,
      "separate",
      [0.23998394813912882, 0.21559035515655237, 0.4144913975241201, 0.1299342991801987],
      3e-4,
    ],
  ];
  it.each(references)(
    "agrees with an independent quadrature: %s",
    (_name, groups, goal, spread, expected, within) => {
      const found = chanceBest(groups, goal, spread) as number[];
      expected.forEach((chance, i) => {
        expect(Math.abs(found[i]! - chance)).toBeLessThan(within);
      });
    },
  );

  const spreads = ["pooled", "separate"] as const;

  function sumsToOne(groups: readonly GroupMean[], goal: Goal, spread: (typeof spreads)[number]) {
    const chances = chanceBest(groups, goal, spread) as number[];
    expect(Math.abs(chances.reduce((a, b) => a + b, 0) - 1)).toBeLessThan(1e-9);
    for (const chance of chances) expect(chance).toBeGreaterThanOrEqual(0);
  }

  it("sums to one within 1e-9, also for figures near the least there are", () => {
    const tiny = [
      { n: 4, mean: 1e-200, sd: 1e-201 },
      { n: 4, mean: 3e-200, sd: 1e-201 },
    ];
    for (const groups of [four.slice(1), tiny]) {
      for (const goal of ["high", "low", 240] as const) {
        for (const spread of spreads) sumsToOne(groups, goal, spread);
      }
    }
  });

  // These ask for more points than there are, so they take as long as any groups can.
  it.skipIf(QUICK).each<[Goal]>([["high"], ["low"], [240]])(
    "sums to one within 1e-9 for spreads and counts that lie orders of magnitude apart, and the goal %s",
    (goal) => {
      const counts = [
        { n: 1000, mean: 250, sd: 6 },
        { n: 3, mean: 251, sd: 6 },
      ];
      const apart = [
        { n: 2, mean: 0, sd: 0.001 },
        { n: 2, mean: 10000, sd: 10 },
        { n: 50, mean: 5000, sd: 100000 },
      ];
      for (const spread of spreads) {
        sumsToOne(counts, goal, spread);
        sumsToOne(apart, goal, spread);
      }
    },
  );

  it("gives identical groups equal chances", () => {
    for (const spread of ["pooled", "separate"] as const) {
      const chances = chanceBest([four[1]!, four[1]!, four[1]!], "high", spread) as number[];
      for (const chance of chances) expect(chance).toBeCloseTo(1 / 3, 12);
    }
  });

  it("mirrors: the lowest of negated means has the chances of the highest", () => {
    const mirrored = three.map((group) => ({ ...group, mean: -group.mean }));
    for (const spread of spreads) {
      const [a, b] = [chanceBest(three, "high", spread), chanceBest(mirrored, "low", spread)] as [
        number[],
        number[],
      ];
      a.forEach((chance, i) => {
        expect(b[i]).toBeCloseTo(chance, 10);
      });
    }
  });

  const last = four.slice(1);

  it.each(spreads)(
    "finds nearest to a target far above what is highest, far below what is lowest: %s",
    (spread) => {
      for (const [target, goal] of [
        [400, "high"],
        [5000, "high"],
        [-1000, "low"],
      ] as const) {
        const far = chanceBest(last, target, spread) as number[];
        (chanceBest(last, goal, spread) as number[]).forEach((chance, i) => {
          expect(far[i]).toBeCloseTo(chance, 6);
        });
      }
    },
  );

  it.each(spreads)(
    "has the same chances of lying nearest when all is mirrored at the target: %s",
    (spread) => {
      const mirrored = last.map((group) => ({ ...group, mean: 2 * 160 - group.mean }));
      const there = chanceBest(last, 160, spread) as number[];
      (chanceBest(mirrored, 160, spread) as number[]).forEach((chance, i) => {
        expect(chance).toBeCloseTo(there[i]!, 9);
      });
    },
  );

  // Student's t and the prior lie evenly about one point then, whatever the counts and the spreads.
  it.each(spreads)("gives two groups of one average even chances: %s", (spread) => {
    const even = [
      { n: 3, mean: 160, sd: 5 },
      { n: 12, mean: 160, sd: 2 },
    ];
    for (const chance of chanceBest(even, "high", spread) as number[]) expect(chance).toBeCloseTo(0.5, 8);
  });

  it.each<[Goal]>([["high"], [250.1]])(
    "tells the same by both models of many shots that spread alike: %s",
    (goal) => {
      const many = [
        { n: 400, mean: 250, sd: 6 },
        { n: 900, mean: 250.3, sd: 6 },
        { n: 500, mean: 249.9, sd: 6 },
      ];
      const separate = chanceBest(many, goal, "separate") as number[];
      (chanceBest(many, goal, "pooled") as number[]).forEach((chance, i) => {
        expect(Math.abs(separate[i]! - chance)).toBeLessThan(5e-4);
      });
    },
  );

  it("is all but sure of groups that lie many spreads apart", () => {
    const apart = [
      { n: 10, mean: 100, sd: 1 },
      { n: 10, mean: 200, sd: 1 },
    ];
    for (const spread of ["pooled", "separate"] as const) {
      expect((chanceBest(apart, "high", spread) as number[])[1]).toBeGreaterThan(0.999999);
    }
    const often = apart.map((group) => ({ ...group, n: 1000 }));
    expect((chanceBest(often, "high", "pooled") as number[])[1]).toBeCloseTo(1, 9);
  });

  it("is surer with more shots of the same averages and spreads", () => {
    const of = (n: number) =>
      (
        chanceBest(
          [
            { n, mean: 162, sd: 4 },
            { n, mean: 160, sd: 4 },
          ],
          "high",
          "pooled",
        ) as number[]
      )[0]!;
    expect(of(3)).toBeLessThan(of(6));
    expect(of(6)).toBeLessThan(of(30));
  });

  it("says when nothing tells how far values spread", () => {
    const sound = { n: 3, mean: 2, sd: 1 };
    const single = { n: 1, mean: 1, sd: null };
    const still = { n: 3, mean: 2, sd: 0 };
    const nothing = { kind: "unavailable", message: expect.stringContaining("Nothing tells") };
    expect(chanceBest([single, single], "high", "pooled")).toMatchObject(nothing);
    expect(chanceBest([single, still], "high", "pooled")).toMatchObject(nothing);
    expect(chanceBest([single, { ...single, sd: 3 }], "high", "pooled")).toMatchObject(nothing);
    const each = { kind: "unavailable", message: expect.stringContaining("every group") };
    expect(chanceBest([still, sound], "high", "separate")).toMatchObject(each);
    expect(chanceBest([sound, single], "high", "separate")).toMatchObject(each);
    expect(chanceBest([sound, { ...single, sd: 3 }], "high", "separate")).toMatchObject(each);
    expect(chanceBest([], "high", "pooled")).toMatchObject({
      kind: "unavailable",
      message: expect.stringContaining("no groups"),
    });
    expect(chanceBest([{ n: 0, mean: 1, sd: 1 }], "high", "pooled")).toMatchObject({ kind: "invalid" });
  });

  it("counts for nothing what a single value has for a spread", () => {
    const sound = { n: 3, mean: 2, sd: 1 };
    const single = { n: 1, mean: 2.5, sd: null };
    const plain = chanceBest([sound, single], "high", "pooled");
    for (const sd of [0, 1e9, Number.NaN]) {
      expect(chanceBest([sound, { ...single, sd }], "high", "pooled")).toEqual(plain);
    }
  });

  // On a grid that lies elsewhere, which tells the nearest to 1e-5 or so.
  it.each<[Goal, "pooled" | "separate", number, number, number]>([
    ["high", "pooled", 1e150, 0, 8],
    ["low", "separate", 1e-150, 0, 8],
    [160, "pooled", 0.9144, 1e6, 4],
    [160, "separate", 0.9144, 250, 4],
  ])(
    "does not hang on the unit or on where the scale begins: %s, %s",
    (goal, spread, unit, start, digits) => {
      const to = (figure: number) => figure * unit + start;
      const two = four.slice(0, 2);
      const moved = two.map(({ n, mean, sd }) => ({ n, mean: to(mean), sd: sd! * unit }));
      const plain = chanceBest(two, goal, spread) as number[];
      const found = chanceBest(moved, typeof goal === "number" ? to(goal) : goal, spread) as number[];
      plain.forEach((chance, i) => {
        expect(found[i]).toBeCloseTo(chance, digits);
      });
    },
  );

  it("takes a single value beside a group that spreads, and is sure of one that stands alone", () => {
    const chances = chanceBest(
      [
        { n: 3, mean: 2, sd: 1 },
        { n: 1, mean: 5, sd: null },
      ],
      "high",
      "pooled",
    ) as number[];
    expect(chances[1]).toBeGreaterThan(0.7);
    expect(chanceBest([{ n: 1, mean: 5, sd: null }], "high", "pooled")).toEqual([1]);
  });

  it("names the group and the figure that is no number", () => {
    const sound = { n: 3, mean: 2, sd: 1 };
    const wrong: [GroupMean, string][] = [
      [{ ...sound, n: 2.5 }, "Group 2 has n 2.5"],
      [{ ...sound, mean: Number.NaN }, "Group 2 has mean NaN"],
      [{ ...sound, sd: -1 }, "Group 2 has sd -1"],
      [{ ...sound, sd: null }, "Group 2 has sd null"],
      [{ ...sound, sd: Number.POSITIVE_INFINITY }, "Group 2 has sd Infinity"],
    ];
    for (const [group, words] of wrong) {
      expect(chanceBest([sound, group], "high", "pooled")).toMatchObject({
        kind: "invalid",
        message: expect.stringContaining(words),
      });
    }
    expect(chanceBest([sound, sound], Number.NaN, "pooled")).toMatchObject({
      kind: "invalid",
      message: expect.stringContaining("goal is NaN"),
    });
  });
});
