import { FONT } from "./chart-text.ts";

/** Mean width of a letter against its height, about. */
const LETTER = 0.56;
/** What does not fit into this many lines ends in an ellipsis. */
export const MOST_LINES = 3;

/** Words broken into lines no wider than a number of pixels, at most three; what is longer ends in an ellipsis. */
export function wrappedWords(words: string, width: number): string[] {
  const most = Math.max(4, Math.floor(width / (FONT * LETTER)));
  const lines: string[] = [];
  for (const word of words.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && `${last} ${word}`.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  const shown =
    lines.length > MOST_LINES ? [...lines.slice(0, MOST_LINES - 1), `${lines[MOST_LINES - 1]}…`] : lines;
  return shown.map((line) => (line.length > most ? `${line.slice(0, most - 1)}…` : line));
}
