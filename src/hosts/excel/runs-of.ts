/** Places, rising, as runs of neighbours: where each starts and how many it is of. */
export function runsOf(places: readonly number[]): [number, number][] {
  const runs: [number, number][] = [];
  for (const place of places) {
    const last = runs.at(-1);
    if (last && last[0] + last[1] === place) last[1]++;
    else runs.push([place, 1]);
  }
  return runs;
}
