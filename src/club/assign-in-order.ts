/**
 * For each target the number (from 0) of the value it gets, every value at most once, so that the total squared
 * difference is least. There must be as many values as targets, or more.
 *
 * With one figure to match, some best choice keeps order. Let targets s <= t have values u >= v, the wrong way
 * round. Swapping changes the total by (s - v)^2 + (t - u)^2 - (s - u)^2 - (t - v)^2 = 2 (t - s)(v - u) <= 0, so
 * swaps never cost, and sorted targets take sorted values. What remains is which values to leave out, and a table
 * answers that: best(i, k), the least total of the first i targets when k of the values up to there are left out,
 * is the lesser of best(i, k - 1), leaving the last value out, and best(i - 1, k) plus the last pair's square.
 * Time and room grow as targets times values left over.
 */
export function assignInOrder(values: readonly number[], targets: readonly number[]): number[] {
  const byValue = order(values);
  const byTarget = order(targets);
  const spare = values.length - targets.length;
  const width = spare + 1;
  let best = new Float64Array(width);
  const taken = new Uint8Array(targets.length * width);
  for (let i = 1; i <= targets.length; i += 1) {
    const next = new Float64Array(width);
    for (let k = 0; k <= spare; k += 1) {
      const difference = values[byValue[i + k - 1]!]! - targets[byTarget[i - 1]!]!;
      const take = best[k]! + difference * difference;
      const leave = k > 0 ? next[k - 1]! : Number.POSITIVE_INFINITY;
      next[k] = Math.min(take, leave);
      taken[(i - 1) * width + k] = take <= leave ? 1 : 0;
    }
    best = next;
  }
  const chosen = new Array<number>(targets.length);
  let k = spare;
  for (let i = targets.length; i > 0; i -= 1) {
    while (taken[(i - 1) * width + k] === 0) k -= 1;
    chosen[byTarget[i - 1]!] = byValue[i + k - 1]!;
  }
  return chosen;
}

/** Places of the figures from the least to the greatest; equals stay in their order. */
function order(figures: readonly number[]): number[] {
  return figures.map((_, index) => index).sort((a, b) => figures[a]! - figures[b]!);
}
