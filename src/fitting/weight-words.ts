import { isProblem } from "../outcome/problem.ts";
import { metricOf } from "../shots/metrics.ts";
import { holm } from "../stats/index.ts";
import { shownFigure, shownRange } from "./plain-sentences.ts";
import type { Session } from "./session.ts";
import { WEIGHT_WARNING, type WeightEffect, weightEffects } from "./weight-effect.ts";

/** An effect this unlikely without a cause, all figures of the session taken together, is worth telling a player. */
const LEVEL = 0.05;
const MOST_TOLD = 4;

/** Shots beyond the two that any line passes through; fewer lie on one by chance too often (common sense, no source). */
const FEWEST_SPARE = 5;

/**
 * What ten grams more shaft went with, in words, with the warning that belongs to it. A launch monitor gives some
 * fifteen figures a shot, of which one or another leans with the weight by chance: so effects are held against chance
 * by Holm's adjustment, as the changes on a player's page are.
 */
export function weightWords(session: Session): string[] {
  const effects = weightEffects(session).filter(({ n }) => n - 2 >= FEWEST_SPARE);
  if (effects.length === 0) return [];
  const adjusted = holm(effects.map(({ p }) => p));
  if (isProblem(adjusted)) return [];
  const told = effects.filter((_, i) => adjusted[i]! < LEVEL).sort((a, b) => a.p - b.p);
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
