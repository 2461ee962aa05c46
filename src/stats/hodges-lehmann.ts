import { median } from "simple-statistics";
import { type Outcome, unavailable } from "../outcome/problem.ts";
import { finite } from "./finite.ts";
import { type Numbers, present } from "./present.ts";

/**
 * How far the first group lies above the second, one stray shot more or less: the median of all differences between
 * a value of the first and a value of the second (Hodges and Lehmann 1963, Annals of Mathematical Statistics 34,
 * 598-611). Stands beside the difference of means when there are outliers.
 */
export function hodgesLehmann(first: Numbers, second: Numbers): Outcome<number> {
  const a = present(first);
  const b = present(second);
  if (a.length === 0 || b.length === 0) return unavailable("Each group needs at least one value.");
  if (a.length * b.length > mostPairs) return unavailable(tooMany);
  return finite(median(a.flatMap((high) => b.map((low) => high - low))));
}

/**
 * The centre of one group, one stray shot more or less: the median of the means of all pairs, each value with
 * itself included (Hodges and Lehmann 1963).
 */
export function hodgesLehmannCentre(values: Numbers): Outcome<number> {
  const known = present(values);
  if (known.length === 0) return unavailable("There are no values; at least one number is needed.");
  // Stryker disable next-line EqualityOperator: eight million is no square
  if (known.length ** 2 > 2 * mostPairs) return unavailable(tooMany);
  return median(known.flatMap((value, i) => known.slice(i).map((other) => value / 2 + other / 2)));
}

const mostPairs = 4_000_000;
const tooMany = `There are more than ${mostPairs} pairs of values; take the median, which needs none.`;
