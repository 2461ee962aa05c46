/** Any row of numbers the statistics take: a plain list, a typed array, a column of a shot table. */
export type Numbers = ArrayLike<number>;

/**
 * The values that are there. A missing figure is NaN in this project, and every statistic leaves it out through
 * this one function, so that no two of them disagree about how many shots there were. An infinite value, which no
 * instrument measures, is left out too.
 *
 * `present([251, NaN, 248])` is `[251, 248]`.
 */
export function present(values: Numbers): number[] {
  const there: number[] = [];
  // Stryker disable next-line EqualityOperator: behind the last value there is undefined, which is no number
  for (let i = 0; i < values.length; i++) if (Number.isFinite(values[i]!)) there.push(values[i]!);
  return there;
}
