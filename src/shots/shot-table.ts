import type { MetricKey, Unit } from "./metrics.ts";

/**
 * Shots as they were understood, column by column. Every array has one entry a shot, in the order of the pasted
 * text, so that `build[i]`, `keep[i]` and `values.get("carry")![i]` speak of the same shot. Columns rather than an
 * object a shot: statistics walk one column at a time, and a hundred thousand shots stay small.
 */
export interface ShotTable {
  readonly size: number;
  /** Row of the pasted text each shot stands in, counted from 1. */
  readonly row: readonly number[];
  readonly build: readonly string[];
  /** Empty where the table names no club. */
  readonly club: readonly string[];
  /** The table's own number of the shot, as text; empty where it has none. */
  readonly shot: readonly string[];
  /** When it was hit, as text; empty where the table does not say. */
  readonly time: readonly string[];
  readonly keep: readonly boolean[];
  /** Figures in the units of METRICS; NaN where a shot has none. Only metrics that the table has. */
  readonly values: ReadonlyMap<MetricKey, Float64Array>;
  /** Columns that were not recognised, kept as they are. */
  readonly extras: readonly ExtraColumn[];
  readonly columns: readonly ColumnReading[];
  readonly problems: readonly TableProblem[];
  readonly skipped: readonly SkippedRow[];
  /** What else the reader should know: the delimiter, the decimal mark, how builds were found. */
  readonly notes: readonly string[];
}

/** A column that was not recognised, kept as it was pasted. */
export interface ExtraColumn {
  readonly header: string;
  readonly cells: readonly string[];
}

/** What one column of the pasted table was taken for, so that the fitter can see it and correct it. */
export interface ColumnReading {
  /** Counted from 1, as a person counts. */
  readonly column: number;
  readonly header: string;
  readonly key: MetricKey | "club" | "build" | "shot" | "time" | "keep" | null;
  /** The unit the figures came in; empty where there is none. */
  readonly unit: Unit | string;
  /** How the unit was found: stated in the table, or the usual one taken. */
  readonly unitFrom: "header" | "row" | "cells" | "assumed" | "none";
}

/** Something that was not understood, or that contradicts itself. The cell is left as it was. */
export interface TableProblem {
  readonly row: number;
  /** Counted from 1; 0 where the whole row is meant. */
  readonly column: number;
  readonly found: string;
  /** One sentence: what is wrong and what would do. */
  readonly message: string;
}

/** A row that is no shot, and why. */
export interface SkippedRow {
  readonly row: number;
  readonly reason: string;
}
