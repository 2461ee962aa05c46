import { buildPlaces } from "../fitting/build-places.ts";
import type { Session } from "../fitting/session.ts";
import type { ShotTable } from "../shots/shot-table.ts";

/** A build's mean over the shots that have a figure; null where none has. */
export interface MeanCarry {
  readonly build: string;
  readonly mean: number | null;
  readonly shots: number;
}

/** Means of a column of figures, NaN where a shot has none, over each build's counted shots. */
export function meansByBuild({ table, builds }: Session, column: ArrayLike<number>): MeanCarry[] {
  return builds.map(({ name }) => {
    let [sum, shots] = [0, 0];
    for (const place of buildPlaces(table).get(name)?.kept ?? []) {
      if (Number.isNaN(column[place]!)) continue;
      sum += column[place]!;
      shots += 1;
    }
    return { build: name, mean: shots === 0 ? null : sum / shots, shots };
  });
}

/** At most so many counted shots of each build, evenly picked, in the order of the table. */
export function evenly(table: ShotTable, most: number): number[] {
  const picked: number[] = [];
  for (const { kept } of buildPlaces(table).values()) {
    const count = Math.min(most, kept.length);
    for (let at = 0; at < count; at++) picked.push(kept[Math.floor((at * kept.length) / count)]!);
  }
  return picked.sort((a, b) => a - b);
}
