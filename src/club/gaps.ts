/**
 * The step from each figure to the one before it: lofts through a set, or carries. The first has none, and neither
 * has one beside a figure that is missing (`undefined`).
 *
 * @example gaps([24, 27, undefined, 34]) // [undefined, 3, undefined, undefined]
 */
export function gaps(figures: readonly (number | undefined)[]): (number | undefined)[] {
  return figures.map((figure, index) => {
    const before = figures[index - 1];
    return figure === undefined || before === undefined ? undefined : figure - before;
  });
}
