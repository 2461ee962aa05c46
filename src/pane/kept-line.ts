import { linesOf } from "./lines-of.ts";

/** A line that was changed both in the pane and in the table that is followed. The pane's stays. */
export interface KeptLine {
  /** Where the pane's line stands, or would stand, in the session's text, counted from 1. */
  readonly row: number;
  /** What the table had before. */
  readonly was: string;
  /** null where the row was taken out in the pane. */
  readonly ours: string | null;
  /** null where the table has the row no more. */
  readonly theirs: string | null;
}

/** Those that still wait for a word, each at the row where it now stands: neither edited since nor as the table has it. */
export function stillKept(kept: readonly KeptLine[], text: string): readonly KeptLine[] {
  const lines = linesOf(text);
  return kept.flatMap((one) => {
    if (one.ours === null) return one.theirs !== null && lines.includes(one.theirs) ? [] : [one];
    const place = lines[one.row - 1] === one.ours ? one.row - 1 : lines.indexOf(one.ours);
    return place < 0 ? [] : [{ ...one, row: place + 1 }];
  });
}

/** With what another change of the table adds: a line that it changed once more is told of once. */
export function keptAlso(earlier: readonly KeptLine[], later: readonly KeptLine[]): readonly KeptLine[] {
  const again = new Set(later.map(({ was }) => was));
  return [...earlier.filter(({ theirs }) => theirs === null || !again.has(theirs)), ...later];
}

const MOST_TOLD = 3;
const MOST_LETTERS = 60;

/** Says which of the pane's lines stayed although the table has others, or "" where none did. */
export function keptSentence(kept: readonly KeptLine[]): string {
  if (kept.length === 0) return "";
  const told = kept.slice(0, MOST_TOLD).map(({ row, ours, theirs }) => {
    const which = ours === null ? "a row taken out here" : `row ${row}`;
    return `${which} (${theirs === null ? "the table has it no more" : `the table now has ${shortened(theirs)}`})`;
  });
  const more = kept.length - told.length;
  const what = kept.length === 1 ? "1 line was" : `${kept.length} lines were`;
  return `${what} changed here and in the table; yours stay: ${told.join(", ")}${more > 0 ? ` and ${more} more` : ""}.`;
}

function shortened(line: string): string {
  const words = line.replaceAll("\t", " ").trim();
  return words.length > MOST_LETTERS ? `${words.slice(0, MOST_LETTERS)}…` : words;
}
