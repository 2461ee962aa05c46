import { isProblem, type Outcome } from "../outcome/problem.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import { anova, type Ellipse, hotellingEllipse, permutationP, welchAnova } from "../stats/index.ts";
import { buildGroup, missPattern } from "./build-group.ts";
import { buildPairs, buildValues } from "./build-values.ts";
import { chanceOfMetric } from "./chance-of-metric.ts";
import { goalChances } from "./chances.ts";
import { compareBuilds } from "./compare-builds.ts";
import { decide } from "./decide.ts";
import { deliveryDoubts } from "./delivery-doubts.ts";
import { familyDifferences } from "./family-differences.ts";
import { computedWords } from "./filled-session.ts";
import { impossibleWords } from "./impossible-words.ts";
import { driftWarnings } from "./order-drift.ts";
import { outlierWords } from "./outlier-words.ts";
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
    anova: Object.fromEntries(
      [...session.table.values.keys()].map((key) => [key, overallTests(session, key)]),
    ),
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
    calibration: flight.calibration && { ...flight.calibration, model: flight.calibration.model.name },
    computed: Object.fromEntries(
      [...(session.computed ?? [])].map(([key, shots]) => [
        key,
        [...shots].map((shot) => session.table.row[shot]!),
      ]),
    ),
    groups: session.builds.flatMap(({ name }) => {
      const group = buildGroup(session, name);
      return group
        ? [{ build: name, ...group, centre: centreOf(session, name), pattern: missPattern(group) }]
        : [];
    }),
    problems,
    skipped,
    notes: [
      ...notes,
      ...(isProblem(decision) ? [decision.message] : []),
      ...driftWarnings(session),
      ...deliveryDoubts(session).map(({ message }) => message),
      ...impossibleWords(session),
      ...computedWords(session),
      ...outlierWords(session),
      ...flight.notes,
    ],
  };
}

/** What `--json` prints. */
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
      permutationP: permutationOf(session, build, metric),
      chanceBest: chances.get(metric)?.get(build) ?? null,
    };
  });
}

/** Beyond this many shots of either build the exact count of all deals takes long and says no more than Welch's t. */
const MOST_DEALT = 7;

function permutationOf(session: Session, build: string, metric: MetricKey): number | null {
  const [mine, theirs] = [build, session.baseline].map((name) => buildValues(session.table, name, metric));
  if (Math.max(mine!.length, theirs!.length) > MOST_DEALT) return null;
  return orNull(permutationP(mine!, theirs!));
}

/** Whether all builds could be the same in a metric, with one shared spread and with each its own. */
function overallTests(session: Session, metric: MetricKey) {
  const groups = session.builds
    .map(({ name }) => buildValues(session.table, name, metric))
    .filter(({ length }) => length > 1);
  return { shared: orNull(anova(groups)), welch: orNull(welchAnova(groups)) };
}

/** The 95 % limits of where the middle of a build's shots truly lies. */
function centreOf(session: Session, build: string): Ellipse | null {
  const { x, y } = buildPairs(session.table, build, "carry", "offline");
  return orNull(hotellingEllipse(x, y));
}

function orNull<T>(outcome: Outcome<T>): T | null {
  return isProblem(outcome) ? null : outcome;
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
