import { isProblem } from "../outcome/problem.ts";
import { factor } from "../units/factor.ts";
import { metricOf } from "./metrics.ts";
import { isMissing } from "./missing.ts";
import { plainNumber } from "./plain-number.ts";
import { readFigure } from "./read-figure.ts";
import type { CellReading, FigureColumn } from "./section.ts";
import { hasSides } from "./side-words.ts";

const MISSING: CellReading = { value: Number.NaN, understood: true, otherMark: false };
const NOTHING: CellReading = { value: Number.NaN, understood: false, otherMark: false };

/**
 * Reads a cell that is no plain number. A unit behind the figure goes before that of the heading; one that measures
 * something else makes the cell unreadable. A side word settles the sign whatever the heading says of signs.
 */
export function readCell(cell: string, column: FigureColumn): CellReading {
  let found = column.read.get(cell);
  if (!found) {
    found = readAfresh(cell, column);
    if (column.read.size < ENOUGH) column.read.set(cell, found);
  }
  return found;
}

/** Figures of one decimal within the range of a metric; more would only fill memory. */
const ENOUGH = 20_000;

function readAfresh(cell: string, column: FigureColumn): CellReading {
  const trimmed = cell.trim();
  if (isMissing(trimmed)) return MISSING;
  const plain = plainNumber(trimmed, column.decimal);
  if (!Number.isNaN(plain)) return reading(plain, column.times, column.over, false);
  const figure = readFigure(trimmed, column.key, column.mark);
  if (!figure) return NOTHING;
  const turn = figure.sided ? Math.abs(column.times) : column.times;
  if (figure.unit === "") return reading(figure.value, turn, column.over, figure.otherMark);
  const usual = metricOf(column.key).unit;
  const by = factor(figure.unit, usual || "none");
  if (isProblem(by)) return NOTHING;
  return reading(figure.value, by.times * Math.sign(turn), by.over, figure.otherMark);
}

function reading(value: number, times: number, over: number, otherMark: boolean): CellReading {
  const turned = (value * times) / over;
  return { value: turned === 0 ? 0 : turned, understood: true, otherMark };
}

/** What would do in a column, for the sentence beside a cell that did not. */
export function wouldDo(column: FigureColumn): string {
  const number = `152${column.mark}3`;
  const unit = column.unit ? ` in ${UNIT_WORDS.get(column.unit) ?? column.unit}` : "";
  if (column.key === "smash") return `a number such as 1${column.mark}42 would do`;
  if (column.unit === "rpm") return `a number${unit} such as 2450 would do`;
  if (hasSides(column.key) && column.key !== "attack" && !column.key.startsWith("strike")) {
    return `a number${unit} such as -12${column.mark}3 or 12${column.mark}3 L would do`;
  }
  if (column.unit === "degrees") return `a number${unit} such as 14${column.mark}2 would do`;
  return `a number${unit} such as ${column.key === "flightTime" ? `6${column.mark}1` : number} would do`;
}

const UNIT_WORDS: ReadonlyMap<string, string> = new Map([
  ["yd", "yards"],
  ["m", "metres"],
  ["ft", "feet"],
  ["s", "seconds"],
]);
