import { headerStrength } from "./header-row.ts";
import { splitText } from "./split-text.ts";

/** In the order in which they are believed when nothing speaks for one of them. */
const CANDIDATES = ["\t", ";", "|", ","] as const;

const NAMES: ReadonlyMap<string, string> = new Map([
  ["\t", "tab"],
  [";", "semicolon"],
  ["|", "pipe"],
  [",", "comma"],
]);

/** A delimiter in words. */
export function delimiterName(delimiter: string): string {
  return NAMES.get(delimiter) ?? `"${delimiter}"`;
}

/**
 * Finds what parts the cells: the candidate under which some row has the most headings that are known; among equals
 * the one under which the rows below have as many cells as that row. Column names say more than counting marks,
 * for a decimal comma is as regular as a delimiter. A text in one column has none of them; it counts as tabbed.
 */
export function sniffDelimiter(text: string): string {
  const end = text.indexOf("\n", ENOUGH);
  const start = end < 0 ? text : text.slice(0, end);
  let best: string = CANDIDATES[0];
  let bestScore = -1;
  for (const delimiter of CANDIDATES) {
    if (delimiter !== "\t" && !start.includes(delimiter)) continue;
    const { cells } = splitText(start, delimiter, 60);
    const score = scoreOf(cells, start.includes(delimiter));
    if (score > bestScore) {
      best = delimiter;
      bestScore = score;
    }
  }
  return best;
}

/** Characters looked at; the headings stand near the top. */
const ENOUGH = 50_000;

function scoreOf(cells: readonly (readonly string[])[], present: boolean): number {
  let header = -1;
  let known = 0;
  cells.forEach((record, index) => {
    const strength = headerStrength(record);
    if (strength > known) {
      known = strength;
      header = index;
    }
  });
  if (known === 0 && !present) return 0;
  const below = cells.slice(header + 1);
  const width = cells[header]?.length ?? below[0]?.length ?? 1;
  const same = below.filter((record) => record.length === width).length;
  return known + (0.9 * same) / Math.max(1, cells.length - header - 1);
}
