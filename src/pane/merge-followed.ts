import { diff3Merge } from "node-diff3";
import type { Draft } from "./draft.ts";

/**
 * A session's text and ticks once the table it was taken from has changed. What was changed in the pane stays, be it
 * a line or rows that were added; rows that are new in the table come in, and lines that changed there follow it. A
 * tick goes with its line wherever that now stands, and goes where the line has become another.
 *
 * `before` is the table as it was read last, `after` as it is now. Rows that were taken out in the pane stay out.
 */
export function mergeFollowed(
  { text, ticks }: Pick<Draft, "text" | "ticks">,
  before: string,
  after: string,
): Pick<Draft, "text" | "ticks"> {
  const [ours, old, theirs] = [linesOf(text), linesOf(before), linesOf(after)];
  const merged = diff3Merge(ours, old, theirs, { excludeFalseConflicts: true }).flatMap(
    ({ ok, conflict }) => ok ?? bothOf(conflict!),
  );
  return { text: merged.join("\n"), ticks: movedTicks(ticks, ours, merged) };
}

/** Where both sides changed a line, ours stays; rows that theirs has below it come in all the same. */
function bothOf({ a, o, b }: { a: string[]; o: string[]; b: string[] }): string[] {
  const grown = o.every((line, i) => line === b[i]);
  return grown ? [...a, ...b.slice(o.length)] : a;
}

function linesOf(text: string): string[] {
  const lines = text.split(/\r?\n/);
  return lines.at(-1) === "" ? lines.slice(0, -1) : lines;
}

/** Ticks are by row, counted from 1; a line is known by what it says and by how many like it stand above. */
function movedTicks(ticks: Draft["ticks"], from: readonly string[], to: readonly string[]): Draft["ticks"] {
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
