import type { ColumnKey } from "./column-names.ts";
import { METRICS, type MetricKey } from "./metrics.ts";
import type { ColumnReading } from "./shot-table.ts";

/** One column of a header, and how its cells are to be read. */
export interface PlannedColumn {
  /** Counted from 0, as cells are. */
  readonly index: number;
  readonly header: string;
  readonly key: ColumnKey | null;
  readonly unit: string;
  readonly unitFrom: ColumnReading["unitFrom"];
  readonly decimal: "." | ",";
  readonly leftPositive: boolean;
}

const METRIC_KEYS: ReadonlySet<string> = new Set(METRICS.map((metric) => metric.key));

/** Tells the columns of figures from those of names. */
export function isMetricKey(key: ColumnKey | null): key is MetricKey {
  return key !== null && METRIC_KEYS.has(key);
}
