import { COLUMN_NAMES } from "./column-names.ts";
import { isMissing } from "./missing.ts";
import { squash } from "./words.ts";

/** A line that stands above shots and says something of them. */
export interface Title {
  /** A build or club that is named as one, a line that may be the name of a build, or something else. */
  readonly says: "build" | "club" | "perhaps a build" | "something else";
  readonly text: string;
}

const ABOUT_THE_SESSION = new Set(
  `player name golfer date day session location place site bay operator fitter coach ball balltype balls temperature
  altitude wind weather note notes comment comments remark units unit report exported exportedby export file device
  handedness hand handicap email spieler datum ort ball notiz joueur lieu balle remarque jugador fecha lugar nota`.split(
    /\s+/,
  ),
);

/**
 * Reads a line with one filled cell, or with a label and a value in two, as a title; null for all others.
 *
 * @example readTitle(["Shaft: 95 g mid", "", ""]) // { says: "build", text: "95 g mid" }
 */
export function readTitle(cells: readonly string[]): Title | null {
  const filled = cells.filter((cell) => !isMissing(cell)).map((cell) => cell.trim());
  if (filled.length === 0 || filled.length > 2) return null;
  const text = filled[0]!;
  const [label, value] = filled.length === 2 ? [text.replace(/\s*[:=]$/, ""), filled[1]!] : split(text);
  if (label !== undefined && value !== undefined) {
    const word = squash(label);
    const key = COLUMN_NAMES.get(word)?.key;
    if (key === "build" || key === "club") return { says: key, text: value };
    if (key || ABOUT_THE_SESSION.has(word)) return { says: "something else", text: filled.join(" ") };
  }
  if (filled.length === 2 || !/\p{L}/u.test(text)) return null;
  return { says: "perhaps a build", text };
}

function split(text: string): [string?, string?] {
  const found = /^([^:=]{1,40}?)\s*[:=]\s*(\S.*)$/s.exec(text);
  return found ? [found[1]!, found[2]!] : [];
}
