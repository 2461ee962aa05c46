import { mean, sum } from "simple-statistics";

/** The squared distances from the mean, summed in two passes with compensation; 0 for a single value. */
export function sumOfSquares(values: readonly number[]): number {
  const centre = mean([...values]);
  return sum(values.map((value) => (value - centre) ** 2));
}
