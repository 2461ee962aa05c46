import { isProblem } from "../outcome/problem.ts";
import { factor } from "../units/factor.ts";
import { figureParts } from "./figure-parts.ts";
import { markedNumber } from "./marked-number.ts";
import { type MetricKey, metricOf } from "./metrics.ts";

/** What may part whole digits from decimals. */
export type Mark = "." | ",";

/** What the figures of one column say about their marks. */
export interface MarkEvidence {
  /** Cells that can only be read with a decimal point, and only with a decimal comma. */
  readonly point: number;
  readonly comma: number;
  /** Of the cells like "1,234" or "1.234", how many a shot can have if the mark is a point, and if it is a comma. */
  readonly unclear: number;
  readonly pointFits: number;
  readonly commaFits: number;
}

/** A bare figure that its mark and its decimals leave no doubt about: most cells, and known at one look. */
const CLEAR = /^[+-]?\d{1,15}([.,])(?:\d{1,2}|\d{4,15})$/;
const UNCLEAR = /^\d{1,3}[.,]\d{3}$/;

/**
 * Looks at the marks of a column's figures. Three digits behind a single mark may be thousands or decimals; such a
 * cell only tells which reading gives a figure that a shot can have.
 */
export function markEvidence(cells: readonly string[], key: MetricKey, unit: string): MarkEvidence {
  const found = { point: 0, comma: 0, unclear: 0, pointFits: 0, commaFits: 0 };
  for (const cell of cells) {
    // Stryker disable all: the lines below come to the same of such a cell, and later
    if (!cell.includes(".") && !cell.includes(",")) continue;
    const mark = CLEAR.exec(cell)?.[1];
    if (mark) {
      found[mark === "." ? "point" : "comma"]++;
      continue;
    }
    // Stryker restore all
    const digits = figureParts(cell)?.digits;
    if (!digits) continue;
    const withPoint = markedNumber(digits, ".");
    const withComma = markedNumber(digits, ",");
    if (UNCLEAR.test(digits) && !digits.startsWith("0")) {
      found.unclear++;
      if (fits(withPoint, key, unit)) found.pointFits++;
      if (fits(withComma, key, unit)) found.commaFits++;
    } else if (Number.isNaN(withComma) && !Number.isNaN(withPoint)) found.point++;
    else if (Number.isNaN(withPoint) && !Number.isNaN(withComma)) found.comma++;
    else if (digits.startsWith("0")) found[digits.includes(".") ? "point" : "comma"]++;
  }
  return found;
}

function fits(value: number, key: MetricKey, unit: string): boolean {
  const { least, most, unit: usual } = metricOf(key);
  const by = usual === "" ? { times: 1, over: 1 } : factor(unit, usual);
  if (isProblem(by)) return false;
  const size = (value * by.times) / by.over;
  return (size >= least && size <= most) || (-size >= least && -size <= most);
}

/**
 * The decimal mark of the whole table: what the clear cells say, or else what the unclear ones allow, or else the
 * point.
 */
export function tableMark(columns: readonly MarkEvidence[]): Mark {
  let balance = 0;
  for (const column of columns) balance += column.point - column.comma;
  if (balance === 0) for (const column of columns) balance += column.pointFits - column.commaFits;
  return balance < 0 ? "," : ".";
}

/**
 * The decimal mark of one column: the table's, unless its own cells leave it open and only the other one gives
 * figures that a shot can have, such as a spin of 2,450 in a table that else writes 16,2.
 */
export function columnMark(column: MarkEvidence, table: Mark): Mark {
  const own = table === "." ? column.point : column.comma;
  const tableFits = table === "." ? column.pointFits : column.commaFits;
  const otherFits = table === "." ? column.commaFits : column.pointFits;
  if (own > 0 || column.unclear === 0) return table;
  const other = table === "." ? "," : ".";
  return tableFits * 2 < column.unclear && otherFits === column.unclear ? other : table;
}
