import type { Figures } from "./figures.ts";

/** Sums of binary fractions are off by less. */
const FUZZ = 1e-9;

/** Which figures a box takes, rounded inwards to a tenth so that both that are named would do: "71.2 to 127 would do." */
export function boundsWords(least: number, most: number, figures: Figures): string {
  const from = Math.ceil(10 * least - FUZZ) / 10;
  const to = Math.floor(10 * most + FUZZ) / 10;
  return `${figures.plain(from, 1)} to ${figures.plain(to, 1)} would do.`;
}
