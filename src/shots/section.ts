import { isProblem } from "../outcome/problem.ts";
import { factor } from "../units/factor.ts";
import type { ColumnKey } from "./column-names.ts";
import { headerStrength, isUnitRow } from "./header-row.ts";
import { type MetricKey, metricOf } from "./metrics.ts";
import type { Mark } from "./number-marks.ts";
import { COMMA, POINT } from "./plain-number.ts";
import { planColumns } from "./plan-columns.ts";
import { isMetricKey, type PlannedColumn } from "./planned-column.ts";
import type { ReadOptions } from "./read-options.ts";
import { settleColumns } from "./settle-columns.ts";
import type { TableProblem } from "./shot-table.ts";

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
}

/** A header and the rows it speaks for: all until another header with other columns. */
export interface Section {
  readonly header: readonly string[];
  /** Records that the header takes: one, more where its words or units go on in the next. */
  readonly depth: number;
  readonly columns: readonly PlannedColumn[];
  readonly figures: readonly FigureColumn[];
  readonly decimal: Mark;
  readonly problems: readonly TableProblem[];
}

/** Reads the header in a record and settles how the rows below are read. */
export function openSection(
  records: readonly (readonly string[])[],
  at: number,
  line: (record: number) => number,
  options: ReadOptions,
): Section {
  const { header, units, depth } =
    at < 0 ? { header: widest(records), units: null, depth: 1 } : readHeaderRows(records, at);
  const plan = planColumns(header, units, at < 0 ? 1 : line(at), options);
  const { columns, decimal } = settleColumns(plan.columns, records.slice(at + depth), options.decimal);
  const figures = columns.flatMap((column) =>
    isMetricKey(column.key) ? [figureColumn(column, column.key)] : [],
  );
  return { header, depth, columns, figures, decimal, problems: plan.problems };
}

interface HeaderRows {
  readonly header: readonly string[];
  readonly units: readonly string[] | null;
  readonly depth: number;
}

/** Takes in a second row of words ("Ball" above "Speed") where that makes more headings known, then a row of units. */
function readHeaderRows(records: readonly (readonly string[])[], at: number): HeaderRows {
  let header = records[at]!;
  let depth = 1;
  const below = records[at + 1];
  if (below && !isUnitRow(below) && !below.some((cell) => /\d/.test(cell))) {
    const both = header.map((cell, index) => `${cell} ${below[index] ?? ""}`.trim());
    if (headerStrength(both) > headerStrength(header)) {
      header = both;
      depth = 2;
    }
  }
  const units = records[at + depth];
  return units && isUnitRow(units) ? { header, units, depth: depth + 1 } : { header, units: null, depth };
}

/** The column that holds one of the names; undefined where none does. */
export function columnOf(section: Section, key: ColumnKey): PlannedColumn | undefined {
  return section.columns.find((column) => column.key === key);
}

/** Stands in for the header of a table that has none. */
function widest(records: readonly (readonly string[])[]): string[] {
  return new Array<string>(records.reduce((width, cells) => Math.max(width, cells.length), 0)).fill("");
}

function figureColumn(column: PlannedColumn, key: MetricKey): FigureColumn {
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
  };
}
