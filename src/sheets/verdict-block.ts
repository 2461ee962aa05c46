import type { VerdictWords } from "../fitting/verdict-words.ts";
import { linesHigh } from "./lines-high.ts";
import type { FormulaCell } from "./plan.ts";
import type { SheetDraft } from "./sheet-draft.ts";

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
  const points = (text: string) => linesHigh(text, columns, "sentence");
  draft.putAcross(
    row++,
    0,
    columns,
    words.headline,
    "sentenceStrong",
    linesHigh(words.headline, columns, "headline"),
  );
  for (const line of [...words.reasons, ...words.costs, words.next].filter((text) => text !== "")) {
    draft.putAcross(row++, 0, columns, line, "sentence", points(line));
  }
  for (const warning of warnings) draft.putAcross(row++, 0, columns, warning, "warning", points(warning));
  draft.putAcross(row++, 0, columns, evidence, "small", 14);
  return row;
}
