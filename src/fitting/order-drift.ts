import { isProblem } from "../outcome/problem.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import { regression } from "../stats/index.ts";
import { shownFigure } from "./plain-sentences.ts";
import type { Session } from "./session.ts";

/** How a metric drifted over the session, whatever the build: warming up, or tiring. */
export interface OrderDrift {
  readonly metric: MetricKey;
  /** Change from the first shot to the last, builds held equal. */
  readonly overSession: number;
  readonly p: number;
}

const WATCHED: readonly MetricKey[] = ["clubSpeed", "ballSpeed", "carry"];

/** A drift this unlikely without a cause is worth a warning. */
const LEVEL = 0.05;

/** Shots beyond what the line and the builds take; fewer lie on a line by chance too often (common sense, no source). */
const FEWEST_SPARE = 5;

/**
 * Drift with the order of the shots, by least squares on the order and on which build it was, so that builds hit late
 * are not blamed or praised for the hour. Metrics with too few shots are left out.
 */
export function orderDrift(session: Session): OrderDrift[] {
  const { table } = session;
  const kept = Array.from({ length: table.size }, (_, i) => i).filter((i) => table.keep[i]);
  const others = session.builds.slice(1).map(({ name }) => kept.map((i) => Number(table.build[i] === name)));
  const used = others.filter((column) => column.some((value) => value === 1));
  return WATCHED.flatMap((metric) => {
    const column = table.values.get(metric);
    if (!column) return [];
    const measured = kept.filter((i) => !Number.isNaN(column[i]!)).length;
    if (measured - used.length - 2 < FEWEST_SPARE) return [];
    const fit = regression(
      kept.map((i) => column[i]!),
      [kept, ...used],
    );
    if (isProblem(fit)) return [];
    const slope = fit.slopes[0]!;
    return [{ metric, overSession: slope.value * (kept.at(-1)! - kept[0]!), p: slope.p }];
  });
}

/** A sentence for each drift that matters, as a fitter reads it. */
export function driftWarnings(session: Session): string[] {
  return mattering(session).map(({ metric, overSession }) => {
    const cause = overSession < 0 ? "the player may have tired" : "the player may have warmed up";
    return `${changeOf(metric, overSession, session.units)} from the first shot to the last, whatever the build: ${cause}. Builds hit late are judged beside it; hit them in turn.`;
  });
}

/** The same for the player, who is told of it and not about. */
export function driftForPlayer(session: Session): string[] {
  return mattering(session).map(({ metric, overSession }) => {
    const cause = overSession < 0 ? "you may have tired" : "you may have warmed up";
    return `${changeOf(metric, overSession, session.units)} from your first shot to your last, whichever build you hit: ${cause}. That shifts the figures of builds hit early or late a little; hitting them in turn evens it out.`;
  });
}

function mattering(session: Session): OrderDrift[] {
  return orderDrift(session).filter(({ p }) => p < LEVEL);
}

function changeOf(metric: MetricKey, change: number, units: UnitSet): string {
  const way = change < 0 ? "fell" : "rose";
  return `${metricOf(metric).label} ${way} by about ${shownFigure(Math.abs(change), metric, units)}`;
}
