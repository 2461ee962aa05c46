import { describe, expect, test } from "vitest";
import { isProblem, type Outcome } from "../../src/outcome/problem.ts";
import { mixedModel } from "../../src/stats/mixed-model.ts";

function answer<T>(outcome: Outcome<T>): T {
  if (isProblem(outcome)) throw new Error(outcome.message);
  return outcome;
}

const ones = (n: number) => Array.from({ length: n }, () => [1]);
const inGroups = (groups: number, each: number) =>
  Array.from({ length: groups * each }, (_, i) => Math.floor(i / each));

describe("a straight line with a level for each group", () => {
  test("gives the published estimates for the Dyestuff data", () => {
    // Data: Davies and Goldsmith 1972, Statistical Methods in Research and Production, 4th ed., table 6.3, as in the R
    // package lme4 (csv/lme4/Dyestuff.csv of the collection vincentarelbundock/Rdatasets, 30 of 30 values). Estimates:
    // that package's own tests (lme4/lme4, tests/testthat/test-lmer.R): level 1527.5, criterion 319.654276842342; the
    // finer of its two optimisers has batch variance 1764.050060, residual 49.51009984775, variance of the level
    // 375.71667627943.
    const yields = [
      1545, 1440, 1440, 1520, 1580, 1540, 1555, 1490, 1560, 1495, 1595, 1550, 1605, 1510, 1560, 1445, 1440,
      1595, 1465, 1545, 1595, 1630, 1515, 1635, 1625, 1520, 1455, 1450, 1480, 1445,
    ];
    const found = answer(mixedModel(yields, ones(30), inGroups(6, 5)));
    expect(found.effects[0]!.estimate).toBeCloseTo(1527.5, 6);
    expect(found.effects[0]!.standardError ** 2).toBeCloseTo(375.71667627943, 3);
    expect(found.groupSd ** 2).toBeCloseTo(1764.05006, 2);
    expect(found.residualSd).toBeCloseTo(49.51009984775, 5);
    expect(found.remlCriterion).toBeCloseTo(319.654276842342, 9);
  });

  test("gives the published estimates for the Rail data", () => {
    // Data: csv/nlme/Rail.csv of the collection vincentarelbundock/Rdatasets (18 of 18 values). Estimates: Pinheiro and
    // Bates 2000, Mixed-Effects Models in S and S-PLUS, section 1.1, as the R package nlme prints them: level 66.5
    // (10.17104), rails 24.80547, residual 4.020779, logarithm of the restricted likelihood -61.0885; the manual page of
    // Rail in the R package MEMSS has the criterion 122.177.
    const times = [55, 53, 54, 26, 37, 32, 78, 91, 85, 92, 100, 96, 49, 51, 50, 80, 85, 83];
    const found = answer(mixedModel(times, ones(18), inGroups(6, 3)));
    expect(found.effects[0]!.estimate).toBeCloseTo(66.5, 6);
    expect(found.effects[0]!.standardError).toBeCloseTo(10.17104, 4);
    expect(found.groupSd).toBeCloseTo(24.80547, 4);
    expect(found.residualSd).toBeCloseTo(4.020779, 5);
    expect(found.remlCriterion).toBeCloseTo(122.177, 3);
    expect(found.remlCriterion).toBeCloseTo(2 * 61.0885, 3);
  });

  test("gives the published slope for the sleepstudy data", () => {
    // Data: Belenky et al. 2003, Journal of Sleep Research 12, 1-12, as in the R package lme4 (csv/lme4/sleepstudy.csv of
    // the collection vincentarelbundock/Rdatasets, 180 of 180 values). Estimates of Reaction ~ Days + (1 | Subject):
    // selbydavid.com/growth/mixed-effects-models.html, section 2.1: 251.4051 (9.7467), 10.4673 (0.8042), subjects
    // 1378.2 (37.12), residual 960.5 (30.99), criterion 1786.5.
    const reactions = SLEEPSTUDY.flat();
    const found = answer(
      mixedModel(
        reactions,
        reactions.map((_, i) => [1, i % 10]),
        inGroups(18, 10),
      ),
    );
    expect(found.effects[0]!.estimate).toBeCloseTo(251.4051, 4);
    expect(found.effects[0]!.standardError).toBeCloseTo(9.7467, 4);
    expect(found.effects[1]!.estimate).toBeCloseTo(10.4673, 4);
    expect(found.effects[1]!.standardError).toBeCloseTo(0.8042, 4);
    expect(found.groupSd).toBeCloseTo(37.12, 2);
    expect(found.residualSd).toBeCloseTo(30.99, 2);
    expect(found.groupSd ** 2).toBeCloseTo(1378.2, 1);
    expect(found.residualSd ** 2).toBeCloseTo(960.5, 1);
    expect(found.remlCriterion).toBeCloseTo(1786.5, 1);
    expect(found.withinDf).toBe(180 - 18 - 1);
  });

  test("finds no spread between groups where batches differ less than their values", () => {
    // Data: Box and Tiao 1973, Bayesian Inference in Statistical Analysis, table 5.1.4, as in the R package lme4
    // (Dyestuff2). Estimates: its own tests (lme4/lme4, tests/testthat/test-lmer.R): level 5.6656, batch variance 0.
    // Without batches the residual is the standard deviation of all thirty, in closed form sqrt(SS / 29).
    const yields = [
      7.298, 3.846, 2.434, 9.566, 7.99, 5.22, 6.556, 0.608, 11.788, -0.892, 0.11, 10.386, 13.434, 5.51, 8.166,
      2.212, 4.852, 7.092, 9.288, 4.98, 0.282, 9.014, 4.458, 9.446, 7.198, 1.722, 4.782, 8.106, 0.758, 3.758,
    ];
    const found = answer(mixedModel(yields, ones(30), inGroups(6, 5)));
    expect(found.groupSd).toBe(0);
    expect(found.effects[0]!.estimate).toBeCloseTo(5.6656, 4);
    const mean = yields.reduce((sum, value) => sum + value, 0) / 30;
    const squares = yields.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    expect(found.residualSd).toBeCloseTo(Math.sqrt(squares / 29), 9);
    expect(found.residualSd).toBeCloseTo(3.715684, 6);
  });

  // NIST, Statistical Reference Datasets, one-way analysis of variance (itl.nist.gov/div898/strd/anova): certified mean
  // squares. All groups have n values, so restricted likelihood gives what the analysis of variance does: the residual
  // variance is the mean square within, the variance of the levels (mean square between - mean square within) / n.
  test.each([
    ["SiRstv", SI_RESISTIVITY, 5, 0.0127865654, 0.010831828],
    ["SmLs01", smallSet(1), 21, 0.21, 0.01],
    ["SmLs04", smallSet(1_000_000), 21, 0.21, 0.01],
  ])("agrees with the certified mean squares of %s", (_, values, each, between, within) => {
    const groups = values.length / each;
    const found = answer(mixedModel(values, ones(values.length), inGroups(groups, each)));
    expect(Math.abs(found.residualSd ** 2 / within - 1)).toBeLessThan(1e-6);
    expect(Math.abs(found.groupSd ** 2 / ((between - within) / each) - 1)).toBeLessThan(1e-6);
    expect(found.effects[0]!.standardError ** 2 / (between / values.length)).toBeCloseTo(1, 6);
  });

  test("takes a mean with weight two for what two equal values would be at the common level", () => {
    const once = answer(
      mixedModel([1, 2, 4, 6, 9, 9], ones(6), ["a", "a", "b", "b", "c", "c"], [2, 2, 2, 2, 2, 2]),
    );
    const plain = answer(mixedModel([1, 2, 4, 6, 9, 9], ones(6), ["a", "a", "b", "b", "c", "c"]));
    expect(once.effects[0]!.estimate).toBeCloseTo(plain.effects[0]!.estimate, 9);
    expect(once.residualSd).toBeCloseTo(plain.residualSd * Math.SQRT2, 6);
    expect(once.groupSd).toBeCloseTo(plain.groupSd, 6);
  });

  test("refuses lists of different lengths, a single group, and columns that say the same", () => {
    expect(mixedModel([1, 2], ones(3), [1, 1])).toMatchObject({ kind: "invalid" });
    expect(mixedModel([1, 2, Number.NaN], ones(3), [1, 1, 2])).toMatchObject({ kind: "invalid" });
    const needed = { kind: "unavailable", message: expect.stringContaining("two groups") };
    expect(mixedModel([1, 2, 3], ones(3), [1, 1, 1])).toMatchObject(needed);
    expect(mixedModel([1, 2, 4], ones(3), [1, 2, 3])).toMatchObject(needed);
    const twice = [1, 2, 3, 4, 5].map((i) => [1, i, 2 * i]);
    expect(mixedModel([1, 2, 4, 3, 5], twice, [1, 1, 2, 2, 3])).toMatchObject({ kind: "unavailable" });
  });
});

/** Resistivity of silicon wafers: five instruments, five values each. */
// biome-ignore format: a table reads best with a line an instrument
const SI_RESISTIVITY = [
  196.3052, 196.124, 196.189, 196.2569, 196.3403,
  196.3042, 196.3825, 196.1669, 196.3257, 196.0422,
  196.1303, 196.2005, 196.2889, 196.0343, 196.1811,
  196.2795, 196.1748, 196.1494, 196.1485, 195.9885,
  196.2119, 196.1051, 196.185, 196.0052, 196.209,
];

/**
 * The simulated sets: nine groups of 21, each a level followed by ten pairs a tenth below and above it. They differ in
 * what stands before the decimal point.
 */
function smallSet(whole: number): number[] {
  return [4, 3, 5, 3, 5, 3, 5, 3, 5].flatMap((level) =>
    Array.from({ length: 21 }, (_, i) => Number(`${whole}.${i === 0 ? level : level + (i % 2 ? -1 : 1)}`)),
  );
}

// biome-ignore format: a table reads best with a line a subject
const SLEEPSTUDY = [
  [249.56, 258.7047, 250.8006, 321.4398, 356.8519, 414.6901, 382.2038, 290.1486, 430.5853, 466.3535],
  [222.7339, 205.2658, 202.9778, 204.707, 207.7161, 215.9618, 213.6303, 217.7272, 224.2957, 237.3142],
  [199.0539, 194.3322, 234.32, 232.8416, 229.3074, 220.4579, 235.4208, 255.7511, 261.0125, 247.5153],
  [321.5426, 300.4002, 283.8565, 285.133, 285.7973, 297.5855, 280.2396, 318.2613, 305.3495, 354.0487],
  [287.6079, 285, 301.8206, 320.1153, 316.2773, 293.3187, 290.075, 334.8177, 293.7469, 371.5811],
  [234.8606, 242.8118, 272.9613, 309.7688, 317.4629, 309.9976, 454.1619, 346.8311, 330.3003, 253.8644],
  [283.8424, 289.555, 276.7693, 299.8097, 297.171, 338.1665, 332.0265, 348.8399, 333.36, 362.0428],
  [265.4731, 276.2012, 243.3647, 254.6723, 279.0244, 284.1912, 305.5248, 331.5229, 335.7469, 377.299],
  [241.6083, 273.9472, 254.4907, 270.8021, 251.4519, 254.6362, 245.4523, 235.311, 235.7541, 237.2466],
  [312.3666, 313.8058, 291.6112, 346.1222, 365.7324, 391.8385, 404.2601, 416.6923, 455.8643, 458.9167],
  [236.1032, 230.3167, 238.9256, 254.922, 250.7103, 269.7744, 281.5648, 308.102, 336.2806, 351.6451],
  [256.2968, 243.4543, 256.2046, 255.5271, 268.9165, 329.7247, 379.4445, 362.9184, 394.4872, 389.0527],
  [250.5265, 300.0576, 269.8939, 280.5891, 271.8274, 304.6336, 287.7466, 266.5955, 321.5418, 347.5655],
  [221.6771, 298.1939, 326.8785, 346.8555, 348.7402, 352.8287, 354.4266, 360.4326, 375.6406, 388.5417],
  [271.9235, 268.4369, 257.2424, 277.6566, 314.8222, 317.2135, 298.1353, 348.1229, 340.28, 366.5131],
  [225.264, 234.5235, 238.9008, 240.473, 267.5373, 344.1937, 281.1481, 347.5855, 365.163, 372.2288],
  [269.8804, 272.4428, 277.8989, 281.7895, 279.1705, 284.512, 259.2658, 304.6306, 350.7807, 369.4692],
  [269.4117, 273.474, 297.5968, 310.6316, 287.1726, 329.6076, 334.4818, 343.2199, 369.1417, 364.1236],
];

test("a mixed model refuses weights of nought, rows of different lengths and a design without columns", () => {
  const groups = ["a", "a", "b", "b"];
  expect(mixedModel([1, 2, 3, 5], ones(4), groups, [1, 1, 0, 1])).toMatchObject({
    message: "weights should be above 0.",
  });
  expect(mixedModel([1, 2, 3, 5], ones(4), groups, [1, 1, 1])).toMatchObject({ kind: "invalid" });
  expect(mixedModel([1, 2, 3, 5], ones(4), groups, [1, 1, Number.NaN, 1])).toMatchObject({ kind: "invalid" });
  expect(mixedModel([1, 2, 3, 5], ones(4), ["a", "a", "b"])).toMatchObject({ kind: "invalid" });
  expect(mixedModel([1, 2, 3, 5], [[1], [1], [1, 2], [1]], groups)).toMatchObject({ kind: "invalid" });
  expect(mixedModel([1, 2, 3, 5], [[1], [1], [Number.NaN], [1]], groups)).toMatchObject({ kind: "invalid" });
  expect(mixedModel([1, 2, 3, 5], [[], [], [], []], groups)).toMatchObject({ kind: "unavailable" });
  expect(mixedModel([], [], [])).toMatchObject({ kind: "unavailable" });
  expect(mixedModel([1, 2, 3, 5], ones(4), ["a", "b", "c", "d"])).toMatchObject({ kind: "unavailable" });
});

describe("a level for each group, in groups of different sizes", () => {
  const y = [12.1, 14, 9.8, 20.3, 21, 15.2, 14.9, 17.7, 15.5, 30.2];
  const group = ["a", "a", "a", "b", "b", "c", "c", "c", "c", "d"];

  // Generalised least squares in closed form: a mean of n values of a group varies by the variance of the levels and an
  // n-th of the residual one; the common level is the mean of such means, each by how sure it is.
  test("the common level is the mean of the groups' means, each weighed by how sure it is", () => {
    const found = answer(mixedModel(y, ones(10), group));
    expect(found.groupSd).toBeGreaterThan(1);
    const means = [...new Set(group)].map((one) => {
      const own = y.filter((_, i) => group[i] === one);
      return {
        mean: own.reduce((sum, value) => sum + value, 0) / own.length,
        sure: 1 / (found.groupSd ** 2 + found.residualSd ** 2 / own.length),
      };
    });
    const all = means.reduce((sum, { sure }) => sum + sure, 0);
    const level = means.reduce((sum, { mean, sure }) => sum + mean * sure, 0) / all;
    expect(found.effects[0]!.estimate).toBeCloseTo(level, 9);
    expect(found.effects[0]!.standardError).toBeCloseTo(1 / Math.sqrt(all), 9);
  });

  test("a level each for two treatments says the same as a common level and a difference", () => {
    const treated = y.map((_, i) => Number(i % 3 === 0));
    const each = answer(
      mixedModel(
        y,
        treated.map((one) => [1 - one, one]),
        group,
      ),
    );
    const apart = answer(
      mixedModel(
        y,
        treated.map((one) => [1, one]),
        group,
      ),
    );
    const [level, difference] = apart.effects.map(({ estimate }) => estimate) as [number, number];
    expect(each.effects[0]!.estimate).toBeCloseTo(level, 6);
    expect(each.effects[1]!.estimate).toBeCloseTo(level + difference, 6);
    expect(each.remlCriterion).toBeCloseTo(apart.remlCriterion, 9);
    expect(each.groupSd).toBeCloseTo(apart.groupSd, 5);
  });

  // A weight says only in what unit the residual variance is counted: the likelihood of the values is the same.
  test.each([1e-8, 0.3, 1e8])("equal weights of %s change the residual spread and nothing else", (weight) => {
    const plain = answer(mixedModel(y, ones(10), group));
    const weighed = answer(
      mixedModel(
        y,
        ones(10),
        group,
        y.map(() => weight),
      ),
    );
    expect(weighed.remlCriterion).toBeCloseTo(plain.remlCriterion, 6);
    expect(weighed.groupSd / plain.groupSd).toBeCloseTo(1, 5);
    expect(weighed.residualSd / (plain.residualSd * Math.sqrt(weight))).toBeCloseTo(1, 5);
    expect(weighed.effects[0]!.standardError / plain.effects[0]!.standardError).toBeCloseTo(1, 5);
  });
});

// Equal sizes have the estimates of the analysis of variance. By hand: means 2 and 12 of three values each leave a mean
// square of 150 between and of 1 within; the level's variance is 150 / 6.
test("two groups are enough, and their levels may lie a hundred spreads apart", () => {
  const groups = ["a", "a", "a", "b", "b", "b"];
  const found = answer(mixedModel([1, 2, 3, 11, 12, 13], ones(6), groups));
  expect(found.groupSd ** 2).toBeCloseTo(149 / 3, 3);
  expect(found.residualSd).toBeCloseTo(1, 6);
  const far = answer(mixedModel([1, 2, 3, 201, 202, 203], ones(6), groups));
  expect(far.groupSd / Math.sqrt((3 * 100 ** 2 * 2 - 1) / 3)).toBeCloseTo(1, 4);
  expect(far.residualSd).toBeCloseTo(1, 4);
});

test("as many columns as values, and values without any rest, hear what is missing", () => {
  const line = [
    [1, 1, 1],
    [1, 2, 4],
    [1, 3, 9],
  ];
  expect(mixedModel([1, 2, 4], line, ["a", "a", "b"])).toMatchObject({
    message: expect.stringContaining("more values than columns"),
  });
  const still = { kind: "unavailable", message: expect.stringContaining("without any rest") };
  const pairs = ["a", "a", "b", "b", "c", "c"];
  expect(mixedModel([5, 5, 5, 5, 5, 5], ones(6), pairs)).toMatchObject(still);
  // The likelihood of groups that do not spread has no end.
  expect(mixedModel([1, 1, 5, 5, 6, 6], ones(6), pairs)).toMatchObject(still);
});
