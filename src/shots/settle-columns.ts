import { isProblem } from "../outcome/problem.ts";
import { factor } from "../units/factor.ts";
import { unitOf } from "../units/unit-of.ts";
import { figureParts } from "./figure-parts.ts";
import { metricOf } from "./metrics.ts";
import { columnMark, type Mark, markEvidence, tableMark } from "./number-marks.ts";
import { isMetricKey, type PlannedColumn } from "./planned-column.ts";

/** Rows looked at first, and those looked at where the first leave the decimal mark open. */
const SAMPLES = [300, 6000] as const;

export interface Settled {
  readonly columns: PlannedColumn[];
  readonly decimal: Mark;
}

/** Settles from the cells what the headings leave open: units written behind the figures, and the decimal mark. */
export function settleColumns(
  planned: readonly PlannedColumn[],
  rows: readonly (readonly string[])[],
  decimal: Mark | undefined,
): Settled {
  let settled = settleBy(planned, sampleOf(rows, SAMPLES[0]), decimal);
  if (settled.open && rows.length > SAMPLES[0])
    settled = settleBy(planned, sampleOf(rows, SAMPLES[1]), decimal);
  return settled;
}

/** Rows from the start and rows spread over the rest, as a table may be pasted together from two. */
function sampleOf(rows: readonly (readonly string[])[], size: number): (readonly string[])[] {
  if (rows.length <= size) return [...rows];
  const start = rows.slice(0, size / 3);
  const step = (rows.length - start.length) / (size - start.length);
  for (let at = start.length; at < rows.length; at += step) start.push(rows[Math.floor(at)]!);
  return start;
}

function settleBy(
  planned: readonly PlannedColumn[],
  sample: readonly (readonly string[])[],
  decimal: Mark | undefined,
): Settled & { open: boolean } {
  const cellsOf = (column: PlannedColumn) => sample.map((row) => row[column.index] ?? "");
  const withUnits = planned.map((column) =>
    column.unitFrom === "assumed" ? unitOfCells(column, cellsOf(column)) : column,
  );
  if (decimal) return { columns: withUnits.map((column) => ({ ...column, decimal })), decimal, open: false };
  const evidence = new Map(
    withUnits.flatMap((column) =>
      isMetricKey(column.key)
        ? [[column, markEvidence(cellsOf(column), column.key, column.unit)] as const]
        : [],
    ),
  );
  const all = [...evidence.values()];
  const table = tableMark(all);
  const columns = withUnits.map((column) => {
    const own = evidence.get(column);
    return { ...column, decimal: own ? columnMark(own, table) : table };
  });
  return { columns, decimal: table, open: all.every(({ point, comma }) => point === comma) };
}

/** The unit most often written behind a column's figures. A bare figure among them is taken to be in the same. */
function unitOfCells(column: PlannedColumn, cells: readonly string[]): PlannedColumn {
  if (!isMetricKey(column.key)) return column;
  const usual = metricOf(column.key).unit;
  const counts = new Map<string, number>();
  for (const cell of cells) {
    // Stryker disable next-line all: such a cell has nothing behind its figure, as the next line finds out later
    if (/\d\s*$/.test(cell)) continue;
    const behind = figureParts(cell)?.behind;
    if (!behind) continue;
    const parts = behind.split(" ");
    const unit = unitOf(behind) ?? unitOf(parts[0]!) ?? unitOf(parts.at(-1)!);
    if (!unit || isProblem(factor(unit.name, usual))) continue;
    counts.set(unit.name, (counts.get(unit.name) ?? 0) + 1);
  }
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  return most ? { ...column, unit: most[0], unitFrom: "cells" } : column;
}
