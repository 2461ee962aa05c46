import type { Draft } from "./draft.ts";

/** Ticks are by row, counted from 1; a line is known by what it says and by how many like it stand above. */
export function movedTicks(
  ticks: Draft["ticks"],
  from: readonly string[],
  to: readonly string[],
): Draft["ticks"] {
  const places = new Map(marksOf(to).map((mark, i) => [mark, i + 1]));
  const marks = marksOf(from);
  return Object.fromEntries(
    Object.entries(ticks).flatMap(([row, keep]) => {
      const place = places.get(marks[+row - 1] ?? "");
      return place === undefined ? [] : [[place, keep]];
    }),
  );
}

function marksOf(lines: readonly string[]): string[] {
  const seen = new Map<string, number>();
  return lines.map((line) => {
    const times = (seen.get(line) ?? 0) + 1;
    seen.set(line, times);
    return `${times} ${line}`;
  });
}
