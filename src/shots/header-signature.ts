import { findHeader } from "./header-row.ts";
import { sniffDelimiter } from "./sniff-delimiter.ts";
import { plainLines, splitText } from "./split-text.ts";

/** Rows looked at: a header stands near the top. */
const ENOUGH = 60;
const LONGEST = 2000;

/**
 * What tells one kind of table from another: its headings in their order, whatever their case and gaps. Where no
 * heading is known the first row with words only and two of them counts, so that a shop's own table has one too.
 * Empty where there is no such row: nothing can be remembered of a table without headings.
 *
 * @example headerSignature("Ball Spd\tMy Dist\n150\t200") // "ball spd|my dist"
 */
export function headerSignature(text: string): string {
  const plain = plainLines(text);
  const { cells } = splitText(plain, sniffDelimiter(plain), ENOUGH);
  const known = findHeader(cells);
  const header = cells[known >= 0 ? known : cells.findIndex(onlyWords)];
  if (!header) return "";
  const names = header.map((name) => name.trim().toLowerCase().replace(/\s+/g, " ").replaceAll("|", "/"));
  while (names.at(-1) === "") names.pop();
  return names.join("|").slice(0, LONGEST);
}

function onlyWords(row: readonly string[]): boolean {
  const filled = row.filter((cell) => cell.trim() !== "");
  return filled.length >= 2 && filled.every((cell) => /^\s*\p{L}/u.test(cell));
}
