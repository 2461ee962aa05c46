import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import type { MetricKey } from "../shots/metrics.ts";
import { tQuantile } from "../stats/index.ts";
import { mixedModel } from "../stats/mixed-model.ts";
import { figureIn, type Row, textIn } from "./cell.ts";
import { playerKey } from "./player-key.ts";

/** What ten grams more in the shaft go with, across players. */
export interface WeightAcrossPlayers {
  readonly metric: MetricKey;
  /** Change of the metric for 10 g more, the same player with the same kind of club, with 95 % limits. */
  readonly perTenGrams: number;
  readonly low: number;
  readonly high: number;
  readonly players: number;
  readonly rows: number;
}

/** With fewer players who hit different weights a slope says more of them than of shafts. */
const FEWEST_PLAYERS = 5;

/**
 * The effect of shaft weight on a metric across players, each with a level of their own for each kind of club as a
 * random effect (`mixedModel`). Weight goes in twice: as what a build lies off the player's own average weight, and as
 * that average. Only the first slope is answered, for strong players are handed heavy shafts: the second one mixes the
 * shaft with the player (Mundlak 1978, Econometrica 46, 69-85). Means count by the shots they are of.
 */
export function weightAcrossPlayers(rows: readonly Row[], metric: MetricKey): Outcome<WeightAcrossPlayers> {
  const found = rows.flatMap((row) => {
    const weight = figureIn(row, "shaftWeight");
    const mean = figureIn(row, `${metric}Mean`);
    const player = playerKey(textIn(row, "player"));
    if (weight === null || mean === null || player === "") return [];
    const shots = figureIn(row, `${metric}N`) ?? figureIn(row, "kept") ?? 1;
    return [{ weight, mean, shots: Math.max(1, shots), group: `${player}|${textIn(row, "kind")}` }];
  });
  const sums = new Map<string, { shots: number; grams: number; weights: Set<number> }>();
  for (const { group, weight, shots } of found) {
    const own = sums.get(group) ?? { shots: 0, grams: 0, weights: new Set<number>() };
    own.shots += shots;
    own.grams += shots * weight;
    own.weights.add(weight);
    sums.set(group, own);
  }
  const telling = [...sums].filter(([, { weights }]) => weights.size > 1);
  const players = new Set(telling.map(([group]) => group.split("|")[0]));
  if (players.size < FEWEST_PLAYERS) {
    return unavailable(
      `It takes ${FEWEST_PLAYERS} players who hit shafts of different weights; there are ${players.size}.`,
    );
  }
  const usual = found.reduce((sum, { weight }) => sum + weight, 0) / found.length;
  const middle = (group: string) => sums.get(group)!.grams / sums.get(group)!.shots;
  const model = mixedModel(
    found.map(({ mean }) => mean),
    between(found.map(({ weight, group }) => [1, weight - middle(group), middle(group) - usual])),
    found.map(({ group }) => group),
    found.map(({ shots }) => shots),
  );
  if (isProblem(model)) return model;
  const slope = model.effects[1]!;
  const half = tQuantile(0.975, model.withinDf) * slope.standardError;
  return {
    metric,
    perTenGrams: 10 * slope.estimate,
    low: 10 * (slope.estimate - half),
    high: 10 * (slope.estimate + half),
    players: players.size,
    rows: found.length,
  };
}

/** Leaves the third column out where all players have the same average weight. */
function between(design: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const third = design.map((row) => row[2]!);
  return third.some((value) => Math.abs(value) > 1e-9) ? design : design.map((row) => row.slice(0, 2));
}
