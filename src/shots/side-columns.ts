import type { FigureColumn } from "./figure-column.ts";
import { isMissing } from "./missing.ts";
import { isMetricKey } from "./planned-column.ts";
import { readHeader } from "./read-header.ts";
import { hasSides, sideOf } from "./side-words.ts";
import { squash } from "./words.ts";

const NAMES = new Set([
  "",
  "lr",
  "rl",
  "leftright",
  "leftorright",
  "offlinelr",
  "sidelr",
  "offlineside",
  "linksrechts",
]);

/**
 * Columns that hold nothing but "L" and "R", or "left" and "right", under a heading that speaks of a side: they give
 * the sign to the figures next to them. A column of the player's hand looks the same, so the heading must fit.
 */
export function sideColumns(header: readonly string[], rows: readonly (readonly string[])[]): number[] {
  const sample = rows.slice(0, 300);
  return header.flatMap((name, index) => {
    const { key } = readHeader(name);
    if (!(NAMES.has(squash(name)) || (isMetricKey(key) && hasSides(key)))) return [];
    let sides = 0;
    for (const cells of sample) {
      const cell = cells[index]?.trim() ?? "";
      if (sideOf(cell, "offline") !== undefined) sides++;
      else if (/\d/.test(cell)) return [];
    }
    return sides > 0 ? [index] : [];
  });
}

/** The figures that a column of sides speaks for: those left of it, else those right of it, else the offline ones. */
export function sidedBy(index: number, figures: readonly FigureColumn[]): FigureColumn | undefined {
  const sided = figures.filter(({ key }) => sideOf("L", key) === -1);
  return (
    sided.find((figure) => figure.index === index - 1) ??
    sided.find((figure) => figure.index === index + 1) ??
    sided.find(({ key }) => key === "offline")
  );
}

/** A figure with the sign of its side; null where the two contradict each other or the side is no side. */
export function withSide(value: number, side: string, key: FigureColumn["key"]): number | null {
  if (isMissing(side) || Number.isNaN(value) || value === 0) return value;
  const sign = sideOf(side.trim(), key);
  if (sign === undefined || (value < 0 && sign === 1)) return null;
  return sign * Math.abs(value);
}
