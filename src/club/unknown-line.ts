import { invalid, type Problem } from "../outcome/problem.ts";
import { setFileLines } from "./set-file-lines.ts";

const DELIMITER_WORDS: Readonly<Record<string, string>> = {
  ...{ ";": "semicolons", ",": "commas", "\t": "tabs", "|": "bars" },
};

/** A line that begins with no word of ours; or with one, but parted otherwise than the table, which is said. */
export function unknownLine([first = "", ...more]: readonly string[], delimiter: string): Problem {
  const word = first
    .split(/[;,|\t]/)[0]!
    .trim()
    .toLowerCase();
  if (more.length === 0 && word !== first.trim().toLowerCase() && Object.hasOwn(setFileLines, word)) {
    const parted = DELIMITER_WORDS[delimiter];
    return invalid(
      `"${first.trim()}" is one cell; it should be parted by ${parted}, as the row of headings is.`,
    );
  }
  const known = Object.keys(setFileLines).join(", ");
  return invalid(`"${first.trim()}" is no line of a set; it should be one of: ${known}, club.`);
}
