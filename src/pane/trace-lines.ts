import { diffIndices } from "node-diff3";

/**
 * Where each line of a text comes from: the place of the line of the old text that it is or has become, or null where
 * it is new. Between two lines that stayed, the first changed line has become the first, the second the second; what
 * is left over is new below, or gone. With `moves`, a line that stands in another place is that line, as when a table
 * was sorted; without, the places only rise.
 */
export function traceLines(
  old: readonly string[],
  now: readonly string[],
  { moves = false } = {},
): (number | null)[] {
  const traced: (number | null)[] = now.map(() => null);
  const hunks = diffIndices([...old], [...now]);
  let [from, to] = [0, 0];
  for (const { buffer1, buffer2 } of [...hunks, { buffer1: [old.length, 0], buffer2: [now.length, 0] }]) {
    while (to < buffer2[0]!) traced[to++] = from++;
    [from, to] = [buffer1[0]! + buffer1[1]!, buffer2[0]! + buffer2[1]!];
  }
  const changed = hunks.map(({ buffer1, buffer2 }) => ({ from: places(buffer1), to: places(buffer2) }));
  const found = moves ? traceMoves(old, now, changed) : new Map<number, number>();
  const elsewhere = new Set(found.values());
  for (const [place, source] of found) traced[place] = source;
  for (const hunk of changed) {
    const free = hunk.from.filter((place) => !elsewhere.has(place));
    for (const [n, place] of hunk.to.filter((place) => !found.has(place)).entries())
      traced[place] = free[n] ?? null;
  }
  return traced;
}

/** Lines that were taken from one place and stand word for word in another. */
function traceMoves(
  old: readonly string[],
  now: readonly string[],
  changed: readonly { readonly from: readonly number[]; readonly to: readonly number[] }[],
): Map<number, number> {
  const left = new Map<string, number[]>();
  for (const place of changed.flatMap(({ from }) => from))
    left.set(old[place]!, [...(left.get(old[place]!) ?? []), place]);
  const found = new Map<number, number>();
  for (const place of changed.flatMap(({ to }) => to)) {
    const source = left.get(now[place]!)?.shift();
    if (source !== undefined) found.set(place, source);
  }
  return found;
}

const places = ([start, count]: readonly [number, number]): number[] =>
  Array.from({ length: count }, (_, i) => start + i);
