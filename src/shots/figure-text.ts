/**
 * A figure to so many decimals, rounded as a spreadsheet does: the fifteen digits that it shows, halves away from 0. In
 * binary 17.45 lies a little below 17.45, so that `toFixed` alone would say 17.4 beside a cell that shows 17.5; means
 * of two, four or six shots fall on such halves all the time.
 *
 * @example figureText(17.45, 1) // "17.5"
 */
export function figureText(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  const steps = Math.round(Number((Math.abs(value) * scale).toPrecision(15)));
  return ((value < 0 ? -steps : steps) / scale).toFixed(decimals);
}
