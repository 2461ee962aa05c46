import type { Draft } from "./draft.ts";
import type { KeptLine } from "./kept-line.ts";
import { linesOf } from "./lines-of.ts";
import { movedTicks } from "./moved-ticks.ts";

/** The session with the table's lines in place of those of its own that had stayed. */
export function takeTheirs(
  { text, ticks }: Pick<Draft, "text" | "ticks">,
  kept: readonly KeptLine[],
): Pick<Draft, "text" | "ticks"> {
  const ours = linesOf(text);
  const lines = [...ours];
  // From below, so that no row is moved before its turn comes.
  for (const { row, ours: own, theirs } of [...kept].sort((a, b) => b.row - a.row))
    lines.splice(row - 1, own === null ? 0 : 1, ...(theirs === null ? [] : [theirs]));
  return { text: lines.join("\n"), ticks: movedTicks(ticks, ours, lines) };
}
