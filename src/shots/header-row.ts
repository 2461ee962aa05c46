import { unitOf } from "../units/unit-of.ts";
import { isMissing } from "./missing.ts";
import { readHeader } from "./read-header.ts";

const NOT_FIGURES = new Set(["club", "build", "shot", "time", "keep"]);
const STARTS_AS_NUMBER = /^[(+\-−–.,]*\d/;

/**
 * How many headings of a row are known; 0 unless the row can be a header: at least one of them a metric, and fewer
 * cells that begin like a number than headings that are known.
 */
export function headerStrength(cells: readonly string[]): number {
  let known = 0;
  let metrics = 0;
  let figures = 0;
  for (const cell of cells) {
    if (cell === "" || cell.length > 200) continue;
    if (STARTS_AS_NUMBER.test(cell.trim())) {
      figures++;
      continue;
    }
    const { key } = readHeader(cell);
    if (key === null) continue;
    known++;
    if (!NOT_FIGURES.has(key)) metrics++;
  }
  return metrics > 0 && figures < known ? known : 0;
}

/**
 * Whether a row holds units, such as the second row of a header. A word or two may stand by, "Units" or "text", but
 * no figure, and no more of them than units.
 */
export function isUnitRow(cells: readonly string[]): boolean {
  let units = 0;
  let others = 0;
  for (const cell of cells) {
    if (isMissing(cell)) continue;
    if (unitOf(bareUnit(cell))) units++;
    else if (/\d/.test(cell)) return false;
    else others++;
  }
  return units > 0 && others <= Math.min(units, 2);
}

/** A unit without the brackets it may stand in. */
export function bareUnit(cell: string): string {
  return cell.trim().replace(/^[([{](.*)[)\]}]$/, "$1");
}

/**
 * The first record that is a header, or -1. A single known heading is enough where a figure stands below it in the
 * same column. Where the row below knows more headings, the upper one only groups them.
 */
export function findHeader(records: readonly (readonly string[])[], from = 0): number {
  for (let index = from; index < records.length; index++) {
    const cells = records[index]!;
    const strength = headerStrength(cells);
    if (strength === 0) continue;
    const next = records[index + 1];
    if (next && headerStrength(next) > strength) return index + 1;
    if (strength >= 2 || figureBelow(records, index)) return index;
  }
  return -1;
}

function figureBelow(records: readonly (readonly string[])[], header: number): boolean {
  const column = records[header]!.findIndex((cell) => readHeader(cell).key !== null);
  for (let index = header + 1; index < Math.min(records.length, header + 6); index++) {
    const cell = records[index]![column]?.trim() ?? "";
    if (/\d/.test(cell) && /^(?:[(+\-−–.,]*|left |right |[lr] ?)\d/i.test(cell)) return true;
  }
  return false;
}
