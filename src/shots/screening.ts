import { isProblem } from "../outcome/problem.ts";
import { modifiedZScores, outlierCutoff } from "../stats/modified-z-score.ts";
import { type MetricKey, metricOf } from "./metrics.ts";
import type { ShotTable } from "./shot-table.ts";
import { showing } from "./showing.ts";
import { displayUnit, type UnitSet } from "./unit-set.ts";

/** A figure that lies far from its build's others. It is a proposal: nothing is ever removed unasked. */
export interface OutlierProposal {
  /** Row of the pasted text. */
  readonly row: number;
  /** Place in the columns of the shot table, counted from 0. */
  readonly index: number;
  readonly build: string;
  readonly key: MetricKey;
  readonly value: number;
  /** The modified z-score; negative below the median. */
  readonly score: number;
  readonly message: string;
}

/** With fewer shots of a build a median says too little of what is usual (common practice, no source). */
const FEWEST = 5;

/**
 * Proposes outliers, build by build and metric by metric, among the shots that are kept: values whose modified
 * z-score lies beyond 3.5 (Iglewicz and Hoaglin, 1993). Builds with fewer than 5 such values are passed over.
 *
 * @param units those that the sentences speak in; figures stay as they are
 */
export function proposeOutliers(
  table: ShotTable,
  keys: Iterable<MetricKey> = table.values.keys(),
  units: UnitSet = "us",
): OutlierProposal[] {
  const byBuild = new Map<string, number[]>();
  for (let shot = 0; shot < table.size; shot++) {
    if (!table.keep[shot]) continue;
    const build = table.build[shot]!;
    const shots = byBuild.get(build);
    if (shots) shots.push(shot);
    else byBuild.set(build, [shot]);
  }
  const proposals: OutlierProposal[] = [];
  for (const key of keys) {
    const column = table.values.get(key);
    if (!column) continue;
    for (const [build, shots] of byBuild) {
      const present = shots.filter((shot) => !Number.isNaN(column[shot]!));
      if (present.length < FEWEST) continue;
      const scores = modifiedZScores(present.map((shot) => column[shot]!));
      if (isProblem(scores)) continue;
      present.forEach((index, at) => {
        const score = scores[at]!;
        if (Math.abs(score) <= outlierCutoff) return;
        const [row, value] = [table.row[index]!, column[index]!];
        proposals.push({
          row,
          index,
          build,
          key,
          value,
          score,
          message: sentence(row, build, key, value, score, units),
        });
      });
    }
  }
  return proposals.sort((a, b) => a.index - b.index);
}

function sentence(
  row: number,
  build: string,
  key: MetricKey,
  value: number,
  score: number,
  units: UnitSet,
): string {
  const metric = metricOf(key);
  const { label, decimals } = metric;
  const unit = displayUnit(metric, units);
  const figure = `${showing(metric, units)(value).toFixed(decimals)}${unit && ` ${unit}`}`;
  const where = score > 0 ? "above" : "below";
  return `Row ${row} (${build}): ${label.toLowerCase()} ${figure} lies far ${where} the build's others (modified z-score ${score.toFixed(1)}); look at it before it counts.`;
}
