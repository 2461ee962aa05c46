import { isProblem } from "../outcome/problem.ts";
import type { MetricKey } from "../shots/metrics.ts";
import { chanceBest, sharedSpread } from "../stats/index.ts";
import { buildValues } from "./build-values.ts";
import { groupOf } from "./chances.ts";
import type { Session } from "./session.ts";

/** Metrics of which more is better in itself. Of the others a window, not a height, says what suits. */
const MORE_IS_BETTER: readonly MetricKey[] = ["clubSpeed", "ballSpeed", "smash", "carry", "total"];

/**
 * The chance that each build is the best in one metric: highest where more is better, nearest to the middle of its
 * target window where it has one, nearest to the line for offline. Null for metrics that have no better or worse.
 */
export function chanceOfMetric(session: Session, key: MetricKey): ReadonlyMap<string, number> | null {
  const window = session.windows[key];
  const goal = MORE_IS_BETTER.includes(key)
    ? "high"
    : window
      ? (window.from + window.to) / 2
      : key === "offline"
        ? 0
        : null;
  if (goal === null) return null;
  const judged = session.builds
    .map(({ name }) => ({ name, values: buildValues(session.table, name, key) }))
    .filter(({ values }) => values.length > 0);
  if (judged.length < 2) return null;
  const groups = judged.map(({ values }) => groupOf(values));
  const shared =
    sharedSpread(judged.map(({ values }) => values)).shared || groups.some(({ n, sd }) => n < 2 || !sd);
  const chances = chanceBest(groups, goal, shared ? "pooled" : "separate");
  return isProblem(chances) ? null : new Map(judged.map(({ name }, i) => [name, chances[i]!]));
}
