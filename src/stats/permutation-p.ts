import { mean, sum } from "simple-statistics";
import { type Outcome, unavailable } from "../outcome/problem.ts";
import { type Numbers, present } from "./present.ts";

/** Up to this many ways of dealing the values out are counted: ten against ten are 184 756. */
export const mostSplits = 200_000;

/**
 * The exact two-sided probability that chance alone deals two means at least this far apart: every way of dealing
 * the values out into groups of the same sizes is counted (Fisher 1935, The Design of Experiments, section 21;
 * Pitman 1937). It supposes no normal distribution. Beyond `mostSplits` ways there is no answer; `welch` serves there.
 *
 * Three shots against three can give no less than 2 in 20: `permutationP([1, 2, 3], [4, 5, 6])` is 0.1.
 */
export function permutationP(first: Numbers, second: Numbers): Outcome<number> {
  const a = present(first);
  const b = present(second);
  if (a.length === 0 || b.length === 0) return unavailable("Each group needs at least one value.");
  const splits = binomial(a.length + b.length, a.length);
  if (splits > mostSplits) {
    return unavailable(
      `${a.length} against ${b.length} values can be dealt out in more than ${mostSplits} ways; use Welch's t.`,
    );
  }
  // Centred, so that a group's sum alone says how far the means are apart; dealt by the smaller group.
  const centre = mean([...a, ...b]);
  const values = [...a, ...b].map((value) => value - centre);
  const size = Math.min(a.length, b.length);
  const observed = Math.abs(sum(values.slice(0, a.length)));
  // Sums that are equal on paper differ by rounding; they count as equal.
  const limit = observed - 1e-12 * sum(values.map(Math.abs));
  return countDeals(values, size, limit) / splits;
}

function countDeals(values: readonly number[], size: number, limit: number): number {
  const deal = (from: number, left: number, total: number): number => {
    if (left === 0) return Math.abs(total) >= limit ? 1 : 0;
    let count = 0;
    // Stryker disable next-line ArithmeticOperator: further on too few values are left, and a sum's sign decides nothing
    for (let i = from; i <= values.length - left; i++) count += deal(i + 1, left - 1, total + values[i]!);
    return count;
  };
  return deal(0, size, 0);
}

function binomial(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= k; i++) ways = (ways * (n - k + i)) / i;
  return Math.round(ways);
}
