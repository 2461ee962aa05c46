import type { Draft } from "./draft.ts";
import type { KeptLine } from "./kept-line.ts";
import { linesOf } from "./lines-of.ts";
import { movedTicks } from "./moved-ticks.ts";
import { traceLines } from "./trace-lines.ts";

type Shown = Pick<Draft, "text" | "ticks">;

/** A session once more in step with its table, and which of its lines the table has otherwise. */
export interface Merged extends Shown {
  readonly kept: readonly KeptLine[];
}

/**
 * A session's text and ticks once the table it was taken from has changed. What was changed in the pane stays, be it
 * a line or rows that were added; rows that are new in the table come in, and lines that changed there follow it. Rows
 * that were taken out in the pane stay out. The order is the table's. A tick goes with its line wherever that now
 * stands, and goes where the line has become another.
 *
 * `before` is the table as it was read last, `after` as it is now.
 */
export function mergeFollowed({ text, ticks }: Shown, before: string, after: string): Merged {
  const [ours, old, theirs] = [linesOf(text), linesOf(before), linesOf(after)];
  const sources = traceLines(old, theirs, { moves: true });
  const pane = inThePane(old, ours);
  const merged: string[] = [];
  const kept: KeptLine[] = [];
  /** What the pane makes of an old line; `line` is what the table does. */
  const settle = (place: number, line: string | null) => {
    const [was, own] = [old[place]!, pane.lines[place]!];
    const taken = own === was ? line : own;
    if (own !== was && line !== was && own !== line)
      kept.push({ row: merged.length + 1, was, ours: own, theirs: line });
    if (taken !== null) merged.push(taken);
  };
  /** Rows that came in at a place of the table, one below the other. */
  const newFrom = (next: number) => {
    let end = next;
    while (end < theirs.length && sources[end] === null) end++;
    return theirs.slice(next, end);
  };
  const added = (place: number, next: number) => {
    const rows = pane.added[place + 1]!;
    // The same rows on both sides are rows that someone wrote into both.
    const both = newFrom(next);
    if (rows.length !== both.length || rows.some((row, i) => row !== both[i])) merged.push(...rows);
  };
  const stays = new Set(sources);
  /** What was added below an old line, and below it those old ones that the table has no more. */
  const below = (place: number, next: number) => {
    added(place, next);
    for (let gone = place + 1; gone < old.length && !stays.has(gone); gone++) {
      settle(gone, null);
      added(gone, next);
    }
  };
  below(-1, 0);
  for (const [i, source] of sources.entries()) {
    if (source === null) merged.push(theirs[i]!);
    else {
      settle(source, theirs[i]!);
      below(source, i + 1);
    }
  }
  return { text: merged.join("\n"), ticks: movedTicks(ticks, ours, merged), kept };
}

/** What became of each old line in the pane, null where it was taken out, and what was added above all and below each. */
function inThePane(old: readonly string[], ours: readonly string[]) {
  const lines: (string | null)[] = old.map(() => null);
  const added: string[][] = [[], ...old.map(() => [])];
  let last = -1;
  for (const [i, source] of traceLines(old, ours).entries()) {
    if (source === null) added[last + 1]!.push(ours[i]!);
    else {
      lines[source] = ours[i]!;
      last = source;
    }
  }
  return { lines, added };
}
