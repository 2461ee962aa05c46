import { metricOf } from "../shots/metrics.ts";
import type { SkippedRow, TableProblem } from "../shots/shot-table.ts";
import { compareBuilds } from "./compare-builds.ts";
import type { Session } from "./session.ts";

/** What `--json` prints: figures in mph, yd, ft, degrees and rpm, to full double precision. */
export interface ComparisonJson {
  readonly builds: readonly BuildJson[];
  readonly baseline: string;
  readonly comparisons: readonly DifferenceJson[];
  readonly problems: readonly TableProblem[];
  readonly skipped: readonly SkippedRow[];
  readonly notes: readonly string[];
}

export interface BuildJson {
  readonly name: string;
  readonly shots: number;
  readonly kept: number;
  readonly metrics: Readonly<Record<string, MetricJson>>;
}

export interface MetricJson {
  readonly n: number;
  readonly mean: number;
  /** Null for a single shot; so are the limits. */
  readonly sd: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: string;
}

export interface DifferenceJson {
  readonly build: string;
  readonly metric: string;
  readonly difference: number;
  readonly low: number | null;
  readonly high: number | null;
}

/** The comparison of a session as plain data for other programs. */
export function comparisonJson(session: Session): ComparisonJson {
  const { builds, baseline, differences } = compareBuilds(session);
  const { problems, skipped, notes } = session.table;
  return {
    builds: builds.map(({ name, shots, kept, metrics }) => ({
      name,
      shots,
      kept,
      metrics: Object.fromEntries(
        [...metrics].map(([key, { n, mean, sd, low, high }]) => [
          key,
          { n, mean, sd, low, high, unit: metricOf(key).unit },
        ]),
      ),
    })),
    baseline,
    comparisons: differences.map(({ build, metric, difference, low, high }) => ({
      build,
      metric,
      difference,
      low,
      high,
    })),
    problems,
    skipped,
    notes,
  };
}
