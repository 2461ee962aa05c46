import { mean } from "simple-statistics";
import { isProblem } from "../outcome/problem.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import { holm, welch } from "../stats/index.ts";
import { buildValues } from "./build-values.ts";
import { shownFigure } from "./plain-sentences.ts";
import type { Session } from "./session.ts";

/** One figure with one build and with another, and whether the change is more than chance. */
export interface PlayerChange {
  readonly metric: MetricKey;
  readonly label: string;
  /** The figure in plain words. */
  readonly meaning: string;
  /** Averages, in the units kept inside. */
  readonly from: number;
  readonly to: number;
  /** "7 yd more: most likely a real change", "1 ft less: may be chance". */
  readonly words: string;
}

/** What a player can see or feel; the rest is for the fitter. */
const SHOWN: readonly MetricKey[] = [
  "clubSpeed",
  "ballSpeed",
  "launch",
  "spin",
  "backspin",
  "height",
  "landingAngle",
  "carry",
  "offline",
];

/** With fewer shots hardly any change could be told from chance (common sense, no source). */
const FEWEST = 5;

/** A change this unlikely to be chance, all figures on the page taken together, is called real. */
const LEVEL = 0.05;

/**
 * How the averages change from one build to another. A change is called real by Welch's test, with Holm's adjustment
 * for there being several figures on the page, so that the page seldom takes one chance in twenty for a fact.
 */
export function playerChanges(session: Session, from: string, to: string): PlayerChange[] {
  const { values } = session.table;
  // The part that lifts stands for the spin only where a table has no spin.
  const shown = SHOWN.filter((key) => key !== "backspin" || !values.has("spin"));
  const found = shown.flatMap((key) => {
    const [before, after] = [from, to].map((name) => buildValues(session.table, name, key));
    if (before!.length === 0 || after!.length === 0) return [];
    const test = welch(after!, before!);
    const fewest = Math.min(before!.length, after!.length);
    return [{ key, from: mean(before!), to: mean(after!), fewest, p: isProblem(test) ? null : test.p }];
  });
  const tested = found.filter(({ p }) => p !== null);
  const adjusted = holm(tested.map(({ p }) => p!));
  return found.map((one) => {
    const { label, meaning } = metricOf(one.key);
    const p = isProblem(adjusted) ? undefined : adjusted[tested.indexOf(one)];
    const words = changed(session, one.key, one.to - one.from, howReal(p, one.fewest));
    return { metric: one.key, label, meaning, from: one.from, to: one.to, words };
  });
}

function changed({ units }: Session, key: MetricKey, change: number, real: string): string {
  const by = shownFigure(Math.abs(change), key, units);
  if (/^0(\.0+)?( |$)/.test(by)) return "the same";
  const up = key === "offline" ? "to the right" : "more";
  const down = key === "offline" ? "to the left" : "less";
  return `${by} ${change > 0 ? up : down}: ${real}`;
}

function howReal(p: number | undefined, shots: number): string {
  if (p !== undefined && p < LEVEL) return "most likely a real change";
  if (p === undefined) return "too few shots to say";
  return shots < FEWEST ? "too few shots to settle this" : "may be chance";
}
