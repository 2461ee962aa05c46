import type { ColumnKey } from "./column-names.ts";
import { type FigureColumn, figureColumn } from "./figure-column.ts";
import { headerStrength, isUnitRow } from "./header-row.ts";
import type { Mark } from "./number-marks.ts";
import { planColumns } from "./plan-columns.ts";
import { isMetricKey, type PlannedColumn } from "./planned-column.ts";
import type { ReadOptions } from "./read-options.ts";
import { settleColumns } from "./settle-columns.ts";
import type { TableProblem } from "./shot-table.ts";
import { sideColumns, sidedBy } from "./side-columns.ts";

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
  const rows = records.slice(at + depth);
  const sides = sideColumns(header, rows).filter((index) => options.columns?.[index + 1] === undefined);
  const withoutSides = { ...options.columns, ...Object.fromEntries(sides.map((index) => [index + 1, null])) };
  const plan = planColumns(header, units, at < 0 ? 1 : line(at), { ...options, columns: withoutSides });
  const { columns, decimal } = settleColumns(plan.columns, rows, options.decimal);
  const figures = columns.flatMap((column) =>
    isMetricKey(column.key) ? [figureColumn(column, column.key)] : [],
  );
  for (const index of sides) {
    const sided = sidedBy(index, figures);
    if (sided) figures[figures.indexOf(sided)] = { ...sided, side: index };
  }
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
