/** Names already in use in a workbook, in any case. */
export interface Taken {
  readonly sheets: readonly string[];
  /** Tables and named areas share one set of names. */
  readonly names: readonly string[];
}

/** A workbook with nothing in it. */
export const NOTHING_TAKEN: Taken = { sheets: [], names: [] };

const LONGEST_SHEET_NAME = 31;

/** Characters that no spreadsheet takes in a sheet's name, and control characters, which none shows. */
const FORBIDDEN = /[\\/?*[\]:\p{Cc}]/gu;

/**
 * The wished name where it is free, else the first of "Shots 2", "Shots 3" and so on that is. Forbidden characters
 * become spaces, apostrophes at the ends go, and 31 letters are kept, as the spreadsheet's own rules ask.
 */
export function freeSheetName(wish: string, taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  // "History" is reserved by the spreadsheet itself.
  used.add("history");
  const clean =
    wish
      .replace(FORBIDDEN, " ")
      .replace(/\s+/g, " ")
      .trim()
      .replace(/^'+|'+$/g, "")
      .slice(0, LONGEST_SHEET_NAME)
      .trim() || "Sheet";
  return firstFree(
    clean,
    (n) => `${clean.slice(0, LONGEST_SHEET_NAME - ` ${n}`.length).trimEnd()} ${n}`,
    used,
  );
}

/** The wished table or area name where it is free, else `Shots_2`, `Shots_3` and so on. */
export function freeAreaName(wish: string, taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  const clean = wish.replace(/[^A-Za-z0-9_]/g, "_").replace(/^(?=[^A-Za-z_])/, "_") || "_";
  return firstFree(clean, (n) => `${clean}_${n}`, used);
}

function firstFree(wish: string, numbered: (n: number) => string, used: ReadonlySet<string>): string {
  if (!used.has(wish.toLowerCase())) return wish;
  let n = 2;
  while (used.has(numbered(n).toLowerCase())) n++;
  return numbered(n);
}
