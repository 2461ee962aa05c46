import { INK } from "../sheets/styles.ts";
import { type Mark, mark } from "./mark.ts";
import { round } from "./round.ts";

/** Pixels of the letters of axes and legend. */
export const FONT = 12;

/** Words centred on a place, unless told otherwise. */
export function text(words: string, x: number, y: number, more: Mark["attributes"] = {}): Mark {
  const place = { x: round(x), y: round(y), "text-anchor": "middle", "font-size": FONT, fill: INK };
  return mark("text", { ...place, ...more }, words);
}
