import { invalid, type Outcome, unavailable } from "../outcome/problem.ts";
import { cholesky, choleskySolve } from "./cholesky.ts";
import { finite } from "./finite.ts";
import { type GroupSums, groupSums } from "./group-sums.ts";

/** A straight-line model in which each group has a level of its own. */
export interface MixedModel {
  /** One a column of the design, in its order. */
  readonly effects: readonly { readonly estimate: number; readonly standardError: number }[];
  /** How far levels of groups spread about the common line, as a standard deviation. */
  readonly groupSd: number;
  /** How far single values spread about their group's line, as a standard deviation. */
  readonly residualSd: number;
  /** Minus twice the logarithm of the restricted likelihood at its best. */
  readonly remlCriterion: number;
  readonly values: number;
  readonly groups: number;
  /** Values less groups less the columns that vary within groups: for t limits of those columns. */
  readonly withinDf: number;
}

/**
 * Fits y = X b + level of the group + error, both levels and errors normal with mean 0, by restricted maximum likelihood
 * (Patterson and Thompson 1971, Biometrika 58, 545-554). With one grouping the likelihood depends on one unknown, the
 * ratio of the two variances, once the rest is profiled out (Bates, Maechler, Bolker and Walker 2015, Journal of
 * Statistical Software 67(1), section 3); that ratio is searched, 0 included.
 *
 * `design` has a row a value; put a column of ones in for the common level. `weights`, where given, say of how many
 * single measurements each value is the mean. Needs two groups, one of them with two values, and more values than columns.
 *
 * Six batches of five in the Dyestuff data: level 1527.5, batches 42.001, within batches 49.510.
 */
export function mixedModel(
  y: readonly number[],
  design: readonly (readonly number[])[],
  group: readonly (string | number)[],
  weights?: readonly number[],
): Outcome<MixedModel> {
  const columns = design[0]?.length ?? 0;
  if (design.length !== y.length || group.length !== y.length || (weights && weights.length !== y.length)) {
    return invalid("y, design, group and weights should be equally long.");
  }
  const figures = [...y, ...(weights ?? [])];
  if (
    !figures.every(Number.isFinite) ||
    design.some((row) => row.length !== columns || !row.every(Number.isFinite))
  ) {
    return invalid("y, design and weights should hold numbers only, the same count of them in each row.");
  }
  if (weights?.some((weight) => weight <= 0)) return invalid("weights should be above 0.");
  const sums = groupSums(y, design, group, weights);
  if (sums.groups.length < 2 || y.length <= columns || sums.groups.length >= y.length || columns === 0) {
    return unavailable(
      `A model with levels of groups needs two groups, one of them with two values, and more values than columns; there are ${y.length} values in ${sums.groups.length} groups.`,
    );
  }
  const at = (ratio: number) => profile(sums, ratio);
  const ratio = leastRatio((one) => at(one)?.criterion ?? Number.POSITIVE_INFINITY, sums.meanWeight);
  const best = at(ratio);
  if (!best)
    return unavailable("Columns of the design say the same thing, so their effects cannot be told apart.");
  if (!(best.variance > 0) || ratio * sums.meanWeight > LARGEST_RATIO / 10)
    return unavailable(
      "Values within groups follow the design without any rest, so nothing measures chance.",
    );
  return finite({
    effects: best.estimates.map((estimate, i) => ({
      estimate: estimate + (sums.shift[i] ?? 0),
      standardError: Math.sqrt(best.variance * best.inverse[i]!),
    })),
    groupSd: Math.sqrt(best.variance * ratio),
    residualSd: Math.sqrt(best.variance),
    remlCriterion: best.criterion,
    values: y.length,
    groups: sums.groups.length,
    withinDf: Math.max(1, y.length - sums.groups.length - sums.varying),
  });
}

interface Profiled {
  readonly criterion: number;
  readonly estimates: number[];
  readonly variance: number;
  /** Diagonal of the inverse of X' V^-1 X. */
  readonly inverse: number[];
}

/** All that follows from the ratio of the variance of levels to that of single values. */
function profile(sums: GroupSums, ratio: number): Profiled | null {
  const { size, count, logWeights } = sums;
  const cross = sums.cross.map((row) => [...row]);
  const right = [...sums.right];
  let square = sums.square;
  let logs = -logWeights;
  for (const { weight, x, y } of sums.groups) {
    const pull = ratio / (1 + ratio * weight);
    logs += Math.log1p(ratio * weight);
    square -= pull * y * y;
    for (let i = 0; i < size; i++) {
      right[i]! -= pull * x[i]! * y;
      for (let j = 0; j <= i; j++) {
        cross[i]![j]! -= pull * x[i]! * x[j]!;
        cross[j]![i] = cross[i]![j]!;
      }
    }
  }
  const lower = cholesky(cross);
  if (!lower) return null;
  const estimates = choleskySolve(lower, right);
  const rest = square - estimates.reduce((sum, estimate, i) => sum + estimate * right[i]!, 0);
  const free = count - size;
  const variance = rest / free;
  const determinant = lower.reduce((sum, row, i) => sum + 2 * Math.log(row[i]!), 0);
  const unit = (i: number) => lower.map((_, j) => (i === j ? 1 : 0));
  return {
    // Rounding may leave a rest below nought.
    criterion: variance > 0 ? free * (1 + Math.log(2 * Math.PI * variance)) + logs + determinant : Infinity,
    estimates,
    variance,
    inverse: lower.map((_, i) => choleskySolve(lower, unit(i))[i]!),
  };
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The likelihood of groups without any spread within grows with the ratio for ever, and no ratio is the best. Levels of
 * real groups lie at most some ten of their spreads apart, which is a ratio of a hundred.
 */
const LARGEST_RATIO = 1e6;

/** The ratio with the least criterion: the best of a wide grid, then the golden section round it. */
function leastRatio(criterion: (ratio: number) => number, meanWeight: number): number {
  // Stryker disable next-line UnaryOperator,ArithmeticOperator: a coarser or a narrower grid leads into the same valley
  const powers = Array.from({ length: 61 }, (_, i) => 10 ** (-6 + i / 5));
  const grid = [0, ...powers.map((power) => power / meanWeight)];
  const scores = grid.map(criterion);
  const best = scores.indexOf(Math.min(...scores));
  return refine(criterion, grid[best - 1] ?? 0, grid[best + 1] ?? grid[best]!);
}

function refine(criterion: (ratio: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  // Each step leaves 0.618 of the stretch, sixty together 3e-13.
  // Stryker disable next-line EqualityOperator: one step more or less moves the ratio by that much
  for (let step = 0; step < 60; step++) {
    const a = high - GOLDEN * (high - low);
    const b = low + GOLDEN * (high - low);
    // Stryker disable next-line EqualityOperator: where both are equally good, the best lies between them
    if (criterion(a) <= criterion(b)) high = b;
    else low = a;
  }
  const middle = (low + high) / 2;
  return criterion(from) <= criterion(middle) ? from : middle;
}
