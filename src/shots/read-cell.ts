import { isProblem } from "../outcome/problem.ts";
import { factor } from "../units/factor.ts";
import type { CellReading, FigureColumn } from "./figure-column.ts";
import { metricOf } from "./metrics.ts";
import { isMissing } from "./missing.ts";
import { plainNumber } from "./plain-number.ts";
import { readFigure } from "./read-figure.ts";

const MISSING: CellReading = { value: Number.NaN, understood: true, otherMark: false };
const NOTHING: CellReading = { value: Number.NaN, understood: false, otherMark: false };

/**
 * Reads a cell that is no plain number. A unit behind the figure goes before that of the heading; one that measures
 * something else makes the cell unreadable. A side word settles the sign whatever the heading says of signs.
 */
export function readCell(cell: string, column: FigureColumn): CellReading {
  // Stryker disable all: a cell read afresh is the same figure
  let found = column.read.get(cell);
  if (!found) {
    found = readAfresh(cell, column);
    if (column.read.size < ENOUGH) column.read.set(cell, found);
  }
  return found;
  // Stryker restore all
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
