import type { VerdictWords } from "../fitting/verdict-words.ts";
import type { FormulaCell } from "./plan.ts";
import type { SheetDraft } from "./sheet-draft.ts";

/** Letters of a sentence that fit one line of one column of the sheet, about. */
const LETTERS_A_COLUMN = 8.5;
const LINE = 15.5;

/**
 * The verdict in words, with what it costs and what would settle it, warnings, and the moment all this was worked
 * out. Answers the next free row.
 */
export function putVerdict(
  draft: SheetDraft,
  words: VerdictWords,
  warnings: readonly string[],
  evidence: FormulaCell,
  from: number,
  columns: number,
): number {
  let row = from;
  const points = (text: string) => Math.ceil(text.length / (columns * LETTERS_A_COLUMN)) * LINE + 2;
  draft.putAcross(row++, 0, columns, words.headline, "sentenceStrong", 22);
  for (const line of [...words.reasons, ...words.costs, words.next].filter((text) => text !== "")) {
    draft.putAcross(row++, 0, columns, line, "sentence", points(line));
  }
  for (const warning of warnings) draft.putAcross(row++, 0, columns, warning, "warning", points(warning));
  draft.putAcross(row++, 0, columns, evidence, "small", 14);
  return row;
}
