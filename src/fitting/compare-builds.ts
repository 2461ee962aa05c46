import { isProblem } from "../outcome/problem.ts";
import type { MetricKey } from "../shots/metrics.ts";
import { orderedMetrics } from "../shots/unit-set.ts";
import { type Summary, summary } from "../stats/index.ts";
import { welchOfSummaries } from "../stats/welch-of-summaries.ts";
import { buildPlaces } from "./build-places.ts";
import { buildValues } from "./build-values.ts";
import type { Session } from "./session.ts";

/** What one build's kept shots come to. */
export interface BuildSummary {
  readonly name: string;
  readonly shots: number;
  readonly kept: number;
  /** Only metrics of which at least one kept shot has a figure. */
  readonly metrics: ReadonlyMap<MetricKey, Summary>;
}

/** How far a build lies from the baseline in one metric: build less baseline. */
export interface BuildDifference {
  readonly build: string;
  readonly metric: MetricKey;
  readonly difference: number;
  /** 95 % limits by Welch; null where either build has fewer than two shots or nothing varies. */
  readonly low: number | null;
  readonly high: number | null;
  /** Welch's degrees of freedom and the standard error of the difference; null where the limits are. */
  readonly df: number | null;
  readonly standardError: number | null;
}

/** Each build by itself, and how the others lie from the baseline. */
export interface Comparison {
  readonly builds: readonly BuildSummary[];
  readonly baseline: string;
  readonly differences: readonly BuildDifference[];
}

/** Puts the builds of a session side by side: each metric's count, mean, spread and limits, and the differences. */
export function compareBuilds(session: Session): Comparison {
  const metrics = orderedMetrics(session.table.values.keys());
  const builds = session.builds.map(({ name }) =>
    summariseBuild(
      session,
      name,
      metrics.map((metric) => metric.key),
    ),
  );
  const baseline = builds.find((build) => build.name === session.baseline);
  const others = builds.filter((build) => build !== baseline);
  const differences = others.flatMap((build) =>
    metrics.flatMap(({ key }) => (baseline ? differenceIn(build, baseline, key) : [])),
  );
  return { builds, baseline: session.baseline, differences };
}

function summariseBuild(session: Session, name: string, keys: readonly MetricKey[]): BuildSummary {
  const { table } = session;
  const places = buildPlaces(table).get(name);
  const metrics = new Map<MetricKey, Summary>();
  for (const key of keys) {
    const figures = summary(buildValues(table, name, key));
    if (!isProblem(figures)) metrics.set(key, figures);
  }
  return { name, shots: places?.shots ?? 0, kept: places?.kept.length ?? 0, metrics };
}

function differenceIn(build: BuildSummary, baseline: BuildSummary, key: MetricKey): BuildDifference[] {
  const a = build.metrics.get(key);
  const b = baseline.metrics.get(key);
  if (!a || !b) return [];
  const found = welchOfSummaries({ ...a, sd: a.sd ?? Number.NaN }, { ...b, sd: b.sd ?? Number.NaN });
  const limits = isProblem(found) ? null : found;
  return [
    {
      build: build.name,
      metric: key,
      difference: a.mean - b.mean,
      low: limits?.low ?? null,
      high: limits?.high ?? null,
      df: limits?.df ?? null,
      standardError: limits?.standardError ?? null,
    },
  ];
}
