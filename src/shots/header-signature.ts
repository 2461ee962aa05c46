import { findHeader } from "./header-row.ts";
import { sniffDelimiter } from "./sniff-delimiter.ts";
import { plainLines, splitText } from "./split-text.ts";

/** Rows looked at: a header stands near the top. */
const ENOUGH = 60;
const LONGEST = 2000;

/**
 * The headings of a table, as they stand there. Where no heading is known the first row with words only and two of
 * them counts, so that a shop's own table has some too. Empty where there is no such row.
 */
export function headingsOf(text: string): readonly string[] {
  const plain = plainLines(text);
  const { cells } = splitText(plain, sniffDelimiter(plain), ENOUGH);
  const known = findHeader(cells);
  return cells[known >= 0 ? known : cells.findIndex(onlyWords)] ?? [];
}

/**
 * What tells one kind of table from another: its headings in their order, whatever their case and gaps. Empty where
 * there are none: nothing can be remembered of a table without headings.
 *
 * @example headerSignature("Ball Spd\tMy Dist\n150\t200") // "ball spd|my dist"
 */
export function headerSignature(text: string): string {
  const names = headingsOf(text).map((name) =>
    name.trim().toLowerCase().replace(/\s+/g, " ").replaceAll("|", "/"),
  );
  while (names.at(-1) === "") names.pop();
  return names.join("|").slice(0, LONGEST);
}

function onlyWords(row: readonly string[]): boolean {
  const filled = row.filter((cell) => cell.trim() !== "");
  return filled.length >= 2 && filled.every((cell) => /^\s*\p{L}/u.test(cell));
}
