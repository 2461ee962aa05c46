import { unitOf } from "../units/unit-of.ts";
import { figureParts } from "./figure-parts.ts";
import { markedNumber } from "./marked-number.ts";
import type { MetricKey } from "./metrics.ts";
import { sideOf } from "./side-words.ts";

/** A figure as a cell states it. */
export interface Figure {
  readonly value: number;
  /** The unit stated in the cell, as this project names it; empty where there is none. */
  readonly unit: string;
  /** Whether the number only makes sense with the other decimal mark than the column's. */
  readonly otherMark: boolean;
  /** Whether a word such as "left" gave the sign. */
  readonly sided: boolean;
}

/**
 * Reads a cell that is more than a plain number: thousands marks, a unit, a side before or behind, a minus sign of
 * any kind. Null where the cell cannot be understood, such as a plus sign beside "left".
 *
 * @example readFigure("L 12.3 yd", "offline", ".") // { value: -12.3, unit: "yd", otherMark: false, sided: true }
 */
export function readFigure(cell: string, key: MetricKey, decimal: "." | ","): Figure | null {
  if (EXPONENT.test(cell)) {
    const value = Number(cell.replace(",", "."));
    return Number.isFinite(value) ? { value, unit: "", otherMark: false, sided: false } : null;
  }
  const parts = figureParts(cell);
  if (!parts) return null;
  const beside = readBeside(parts.before, parts.behind, key);
  if (!beside) return null;
  const { side, unit } = beside;
  if ((side === 1 && parts.sign === "-") || (side === -1 && parts.sign === "+")) return null;
  let size = markedNumber(parts.digits, decimal);
  const otherMark = Number.isNaN(size);
  if (otherMark) size = markedNumber(parts.digits, decimal === "." ? "," : ".");
  if (!Number.isFinite(size)) return null;
  const negative = side === -1 || parts.sign === "-";
  return { value: negative && size !== 0 ? -size : size, unit, otherMark, sided: side !== 0 };
}

/** As a spreadsheet shows a figure for which its column is too narrow. */
const EXPONENT = /^[+-]?\d+(?:[.,]\d+)?e[+-]?\d{1,3}$/i;

/** The side and unit in the words round a number; null where a word is neither. */
function readBeside(before: string, behind: string, key: MetricKey): { side: number; unit: string } | null {
  const left = before === "" ? 0 : sideOf(before, key);
  if (left === undefined) return null;
  if (behind === "") return { side: left, unit: "" };
  const unit = unitOf(behind);
  if (unit) return { side: left, unit: unit.name };
  for (const [word, rest] of wordAndRest(behind)) {
    const side = sideOf(word, key);
    const stated = unitOf(rest);
    if (side === undefined || !(rest === "" || stated) || (left !== 0 && left !== side)) continue;
    return { side, unit: stated?.name ?? "" };
  }
  return null;
}

/** "yd L" and "L yd" both: the last word and what is before it, the first and what follows. */
function wordAndRest(text: string): [string, string][] {
  const words = text.split(" ");
  return [
    [words.at(-1)!, words.slice(0, -1).join(" ")],
    [words[0]!, words.slice(1).join(" ")],
  ];
}
