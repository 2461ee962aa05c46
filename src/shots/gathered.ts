import type { MetricKey } from "./metrics.ts";
import type { Section } from "./section.ts";
import type { SkippedRow, TableProblem } from "./shot-table.ts";
import type { Title } from "./title-line.ts";

/** What the walk over the rows brings home, shot by shot, before names are given to builds. */
export interface Gathered {
  size: number;
  /** The record of each shot, and the places in `sections` and `titles` of what it stands below; -1 for none. */
  readonly record: Int32Array;
  readonly section: Int32Array;
  readonly title: Int32Array;
  readonly values: Map<MetricKey, Float64Array>;
  readonly sections: Section[];
  readonly titles: (Title & { readonly record: number; readonly inside: boolean; headed: boolean })[];
  readonly problems: TableProblem[];
  readonly skipped: SkippedRow[];
  /** Lines in which a 0 was taken for a blank, by the heading of the column. */
  readonly zeros: Map<string, number[]>;
  /** Cells that were read with the other decimal mark, as they made sense with no other. */
  otherMarks: number;
}

/** Before the first row. */
export function nothingGathered(records: number): Gathered {
  return {
    size: 0,
    record: new Int32Array(records),
    section: new Int32Array(records),
    title: new Int32Array(records),
    values: new Map(),
    sections: [],
    titles: [],
    problems: [],
    skipped: [],
    zeros: new Map(),
    otherMarks: 0,
  };
}
