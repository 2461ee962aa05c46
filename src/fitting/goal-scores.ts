import { mean, sampleStandardDeviation } from "simple-statistics";
import { type Outcome, unavailable } from "../outcome/problem.ts";
import type { MetricKey } from "../shots/metrics.ts";
import type { ShotTable } from "../shots/shot-table.ts";
import { buildPairs, buildValues } from "./build-values.ts";
import { desirability, overallDesirability } from "./desirability.ts";
import type { Goal, Session } from "./session.ts";
import { type TargetWindows, WINDOW_METRICS } from "./target-windows.ts";

/** One figure a shot for a goal, build by build, so that every goal is judged by the same statistics. */
export interface GoalScores {
  readonly goal: Goal;
  readonly better: "high" | "low";
  /** In the order of the session's builds; builds without any score have none. */
  readonly byBuild: readonly (readonly number[])[];
  /** What a score is, in words: "carry", "distance from the middle of the group". */
  readonly words: string;
}

/**
 * What each kept shot is worth towards a goal.
 *
 * - `carry`: the carry itself, yards.
 * - `tight`: how far the shot lies from the middle of its build's group, yards, made up for small groups by
 *   sqrt(n / (n - 1)); the less the better. Comparing distances from the group's own middle is how Levene's test
 *   compares spreads (Brown and Forsythe 1974, Journal of the American Statistical Association 69, 364-367).
 * - `window`: the overall desirability of launch, spin, height and landing angle in the target windows.
 * - `overall`: the same with carry and offline beside them.
 */
export function goalScores(session: Session, goal: Goal = session.goal): Outcome<GoalScores> {
  const { table } = session;
  const names = session.builds.map(({ name }) => name);
  const scores = (byBuild: number[][], better: "high" | "low", words: string): Outcome<GoalScores> =>
    byBuild.some((list) => list.length > 0)
      ? { goal, better, byBuild, words }
      : unavailable(`The table has nothing to judge the goal ${goal} by.`);
  if (goal === "carry")
    return scores(
      names.map((name) => buildValues(table, name, "carry")),
      "high",
      "carry",
    );
  if (goal === "tight") {
    return scores(
      names.map((name) => distancesFromMiddle(table, name)),
      "low",
      "distance from the middle of the group",
    );
  }
  const parts =
    goal === "window" ? windowParts(table, session.windows) : overallParts(table, session.windows);
  const words = goal === "window" ? "share of the target windows" : "overall score";
  return scores(
    names.map((name) => desirabilities(table, name, parts)),
    "high",
    words,
  );
}

function distancesFromMiddle(table: ShotTable, build: string): number[] {
  const { x, y } = buildPairs(table, build, "carry", "offline");
  if (x.length < 2) return [];
  const [middleX, middleY] = [mean(x), mean(y)];
  const small = Math.sqrt(x.length / (x.length - 1));
  return x.map((carry, i) => Math.hypot(carry - middleX, y[i]! - middleY) * small);
}

interface Part {
  readonly key: MetricKey;
  readonly worth: (value: number) => number;
}

function windowParts(table: ShotTable, windows: TargetWindows): Part[] {
  return WINDOW_METRICS.flatMap((key) => {
    const window = windows[key];
    return window && table.values.has(key)
      ? [{ key, worth: (value: number) => desirability(value, window) }]
      : [];
  });
}

/** Offline by this share of the carry is worth nothing: a seven-iron twenty yards wide. Common practice, no source. */
const WIDE = 0.125;

/** Carry counts from two spreads below the session's average carry to two above. */
const CARRY_REACH = 2;

function overallParts(table: ShotTable, windows: TargetWindows): Part[] {
  const parts = windowParts(table, windows);
  const carry = [...(table.values.get("carry") ?? [])].filter(
    (value, i) => table.keep[i] && !Number.isNaN(value),
  );
  if (carry.length > 1) {
    const middle = mean(carry);
    const spread = sampleStandardDeviation(carry) || 1;
    const from = middle - CARRY_REACH * spread;
    parts.push({ key: "carry", worth: (value) => clamp((value - from) / (2 * CARRY_REACH * spread)) });
    if (table.values.has("offline")) {
      parts.push({ key: "offline", worth: (value) => clamp(1 - Math.abs(value) / (WIDE * middle)) });
    }
  }
  return parts;
}

/** The overall desirability of each kept shot that has every figure counted. */
function desirabilities(table: ShotTable, build: string, parts: readonly Part[]): number[] {
  const scores: number[] = [];
  if (parts.length === 0) return scores;
  for (let i = 0; i < table.size; i++) {
    if (!table.keep[i] || table.build[i] !== build) continue;
    const values = parts.map(({ key }) => table.values.get(key)![i]!);
    if (values.some(Number.isNaN)) continue;
    scores.push(overallDesirability(parts.map(({ worth }, p) => worth(values[p]!))));
  }
  return scores;
}

function clamp(share: number): number {
  return Math.min(1, Math.max(0, share));
}
