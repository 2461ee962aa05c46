import type { ExtraColumn } from "./shot-table.ts";

/** A session has at most about so many builds; a column with more different words is remarks. */
const MOST_BUILDS = 12;

/**
 * Where no column was taken for builds, an unknown column of few words that come again and again may well hold them.
 * It is only pointed out: which word is a build is the fitter's to say. Null where no column looks like it.
 */
export function buildHint(extras: readonly ExtraColumn[], size: number): string | null {
  for (const { header, cells } of extras) {
    const words = new Set(cells.filter((cell) => cell !== "").map((cell) => cell.toLowerCase()));
    const filled = cells.filter((cell) => cell !== "").length;
    const named = [...words].every((word) => /\p{L}/u.test(word));
    if (named && filled === size && words.size >= 2 && words.size <= MOST_BUILDS && size >= 2 * words.size) {
      return `The column "${header}" was not known; its ${words.size} words come again and again. If they are builds, choose "Build" for that column, or name it Build.`;
    }
  }
  return null;
}
