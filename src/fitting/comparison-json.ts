import { isProblem } from "../outcome/problem.ts";
import { metricOf } from "../shots/metrics.ts";
import { buildGroup, missPattern } from "./build-group.ts";
import { chanceOfMetric } from "./chance-of-metric.ts";
import { goalChances } from "./chances.ts";
import { compareBuilds } from "./compare-builds.ts";
import { decide } from "./decide.ts";
import { familyDifferences } from "./family-differences.ts";
import { driftWarnings } from "./order-drift.ts";
import { GOALS, type Session } from "./session.ts";
import { sessionFlight } from "./session-flight.ts";
import { strikeAdjusted } from "./strike-adjusted.ts";
import { verdictWords } from "./verdict-words.ts";
import { WEIGHT_WARNING, weightEffects } from "./weight-effect.ts";
import { whatNext } from "./what-next.ts";

/**
 * The comparison of a session as plain data for other programs: what `--json` prints. Figures are in mph, yd, ft,
 * degrees and rpm, to full double precision; what too few shots cannot give is null. `low` and `high` of a comparison
 * are Welch's own 95 % limits, as on the sheet; `familyLow`, `familyHigh` and `p` hold for all builds together.
 */
export function comparisonJson(session: Session) {
  const { builds, baseline, differences } = compareBuilds(session);
  const { problems, skipped, notes } = session.table;
  const decision = decide(session);
  const next = whatNext(session, decision);
  const adjusted = strikeAdjusted(session);
  const flight = sessionFlight(session);
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
    comparisons: comparisons(session, differences),
    chanceBest: chancesByGoal(session),
    choice: isProblem(decision)
      ? null
      : {
          build: decision.best.build,
          verdict: decision.verdict,
          chance: decision.best.chance,
          runnerUp: decision.runnerUp.build,
          shotsToTell: decision.more.each,
          goal: decision.goal,
          words: verdictWords(session, decision),
        },
    plan: { next: next.build, why: next.why, order: next.order?.rounds ?? [] },
    weightEffect: { effects: weightEffects(session), warning: WEIGHT_WARNING },
    strikeAdjusted: isProblem(adjusted) ? [] : adjusted,
    normalized: flight.same,
    calibration: flight.calibration,
    groups: session.builds.flatMap(({ name }) => {
      const group = buildGroup(session, name);
      return group ? [{ build: name, ...group, pattern: missPattern(group) }] : [];
    }),
    problems,
    skipped,
    notes: [
      ...notes,
      ...(isProblem(decision) ? [decision.message] : []),
      ...driftWarnings(session),
      ...flight.notes,
    ],
  };
}

export type ComparisonJson = ReturnType<typeof comparisonJson>;

function comparisons(session: Session, differences: ReturnType<typeof compareBuilds>["differences"]) {
  const keys = [...new Set(differences.map(({ metric }) => metric))];
  const families = new Map(keys.map((key) => [key, familyDifferences(session, key)]));
  const chances = new Map(keys.map((key) => [key, chanceOfMetric(session, key)]));
  return differences.map(({ build, metric, difference, low, high }) => {
    const family = families.get(metric);
    const row = family?.rows.find((one) => one.build === build)?.row;
    return {
      build,
      metric,
      difference,
      low,
      high,
      p: row?.p ?? null,
      familyLow: row?.low ?? null,
      familyHigh: row?.high ?? null,
      method: family?.method ?? "none",
      hedgesG: row?.g ?? null,
      hodgesLehmann: row?.shift ?? null,
      chanceBest: chances.get(metric)?.get(build) ?? null,
    };
  });
}

/** For each goal the chance of each build; goals that the table cannot be judged by are left out. */
function chancesByGoal(session: Session): Record<string, Record<string, number>> {
  return Object.fromEntries(
    GOALS.flatMap((goal) => {
      const chances = goalChances(session, goal);
      if (isProblem(chances)) return [];
      return [[goal, Object.fromEntries(chances.builds.map(({ build, chance }) => [build, chance]))]];
    }),
  );
}
