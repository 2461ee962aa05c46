import { isProblem } from "../outcome/problem.ts";
import { factor } from "../units/factor.ts";
import { type MetricKey, metricOf } from "./metrics.ts";
import type { Mark } from "./number-marks.ts";
import { COMMA, POINT } from "./plain-number.ts";
import type { PlannedColumn } from "./planned-column.ts";

/** A cell's figure in the usual unit, or NaN. */
export interface CellReading {
  readonly value: number;
  /** False where the cell should have been a figure and is none. */
  readonly understood: boolean;
  /** Whether the figure only made sense with the other decimal mark. */
  readonly otherMark: boolean;
}

/** A column of figures, ready for the walk over the rows. */
export interface FigureColumn {
  readonly index: number;
  readonly key: MetricKey;
  readonly header: string;
  readonly unit: string;
  readonly mark: Mark;
  readonly decimal: number;
  readonly times: number;
  readonly over: number;
  /** Whether 0 is a figure here, rather than a blank in disguise. */
  readonly zero: boolean;
  /** Cells read the long way, as figures with a side or unit come again and again. */
  readonly read: Map<string, CellReading>;
  /** The column of "L" and "R" that gives the sign; -1 where there is none. */
  readonly side: number;
}

/** Makes a planned column ready, with the factor to the usual unit. */
export function figureColumn(column: PlannedColumn, key: MetricKey): FigureColumn {
  const metric = metricOf(key);
  const by = metric.unit === "" ? { times: 1, over: 1 } : factor(column.unit, metric.unit);
  const { times, over } = isProblem(by) ? { times: 1, over: 1 } : by;
  return {
    index: column.index,
    key,
    header: column.header || metric.label,
    unit: column.unit,
    mark: column.decimal,
    decimal: column.decimal === "." ? POINT : COMMA,
    times: column.leftPositive ? -times : times,
    over,
    zero: metric.zero,
    read: new Map(),
    side: -1,
  };
}
