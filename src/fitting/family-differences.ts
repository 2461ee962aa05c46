import { isProblem } from "../outcome/problem.ts";
import type { MetricKey } from "../shots/metrics.ts";
import { type BaselineComparison, type BaselineRow, compareWithBaseline } from "../stats/index.ts";
import { buildValues } from "./build-values.ts";
import type { Session } from "./session.ts";

/** A build against the baseline in one metric, with limits that hold for all builds together. */
export interface FamilyDifference {
  readonly build: string;
  readonly row: BaselineRow;
}

/**
 * All builds against the baseline in one metric: Dunnett's limits where the builds share one spread, Welch's widened
 * by Bonferroni with Holm's probabilities where they do not (see compareWithBaseline, which says which and why).
 * Null where the baseline has no figures.
 */
export function familyDifferences(
  session: Session,
  metric: MetricKey,
): {
  readonly method: BaselineComparison["method"];
  readonly reason: string;
  readonly rows: readonly FamilyDifference[];
} | null {
  const names = session.builds.map(({ name }) => name);
  const groups = names.map((name) => buildValues(session.table, name, metric));
  const found = compareWithBaseline(groups, names.indexOf(session.baseline));
  if (isProblem(found)) return null;
  const rows = names
    .map((build, i) => ({ build, row: found.rows[i]! }))
    .filter(({ build, row }) => build !== session.baseline && row.n > 0);
  return { method: found.method, reason: found.reason, rows };
}
