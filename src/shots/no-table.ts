import { invalid, type Problem } from "../outcome/problem.ts";

/** How the letters of an archive begin, which a workbook is, and how those of a workbook of the older form do. */
const WORKBOOKS = ["PK\u0003\u0004", "ÐÏ\u0011à"];

/** Signs that nobody writes. One or another gets into a true table, by a logger that pads its lines. */
const UNWRITTEN = /(?![\t-\r])\p{Cc}/gu;
/** So many letters are looked at, and more than one in so many of these signs is no text. Both figures are ours. */
const LETTERS = 4096;
const ONE_IN = 50;

/**
 * Why a text can hold no table at all; null where it may. A workbook that was dropped as if it were text is told as
 * what it is, for its bytes read as letters would only tell of headings that are missing.
 */
export function noTable(text: string): Problem | null {
  if (text.trim() === "") {
    return invalid("The text is empty; a table with a row of headings and a row a shot would do.");
  }
  if (WORKBOOKS.some((mark) => text.startsWith(mark))) {
    return invalid("This is a workbook and no text; its cells copied and pasted, or saved as CSV, would do.");
  }
  const start = text.slice(0, LETTERS);
  return (start.match(UNWRITTEN)?.length ?? 0) * ONE_IN > start.length
    ? invalid("This is no text, by the signs in it; a table saved as CSV would do.")
    : null;
}
