import { metricOf } from "../shots/metrics.ts";
import { shownFigure, shownRange } from "./plain-sentences.ts";
import type { Session } from "./session.ts";
import { WEIGHT_WARNING, type WeightEffect, weightEffects } from "./weight-effect.ts";

/** An effect this unlikely without a cause is worth telling a player. */
const LEVEL = 0.05;
const MOST_TOLD = 4;

/** What ten grams more shaft went with, in words, with the warning that belongs to it. */
export function weightWords(session: Session): string[] {
  const effects = weightEffects(session);
  if (effects.length === 0) return [];
  const told = [...effects].filter(({ p }) => p < LEVEL).sort((a, b) => a.p - b.p);
  if (told.length === 0) {
    return [`What weight did: nothing that these shots can show. ${WEIGHT_WARNING}`];
  }
  const parts = told.slice(0, MOST_TOLD).map((effect) => partOf(effect, session));
  return [`What weight did: each 10 g more went with ${parts.join("; ")}. ${WEIGHT_WARNING}`];
}

function partOf({ metric, per10g, low, high }: WeightEffect, { units }: Session): string {
  const way = per10g > 0 ? "more" : "less";
  const [near, far] = [Math.min(Math.abs(low), Math.abs(high)), Math.max(Math.abs(low), Math.abs(high))];
  const label = metricOf(metric).label.toLowerCase();
  return `${shownFigure(Math.abs(per10g), metric, units)} ${way} ${label} (${shownRange(near, far, metric, units)})`;
}
