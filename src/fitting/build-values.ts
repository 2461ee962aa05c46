import type { MetricKey } from "../shots/metrics.ts";
import type { ShotTable } from "../shots/shot-table.ts";
import { buildPlaces } from "./build-places.ts";

/** Figures of one build's kept shots for one metric, missing ones left out, in the order they were hit. */
export function buildValues(table: ShotTable, build: string, key: MetricKey): number[] {
  const column = table.values.get(key);
  const values: number[] = [];
  if (!column) return values;
  const places = buildPlaces(table).get(build)?.kept ?? [];
  for (let i = 0; i < places.length; i++) {
    const value = column[places[i]!]!;
    if (!Number.isNaN(value)) values.push(value);
  }
  return values;
}

/** Two metrics of the same shots, where a shot has both: a group seen from above needs carry and offline together. */
export function buildPairs(
  table: ShotTable,
  build: string,
  first: MetricKey,
  second: MetricKey,
): { readonly x: number[]; readonly y: number[]; readonly index: number[] } {
  const a = table.values.get(first);
  const b = table.values.get(second);
  const pairs = { x: [] as number[], y: [] as number[], index: [] as number[] };
  if (!a || !b) return pairs;
  for (const i of buildPlaces(table).get(build)?.kept ?? []) {
    if (Number.isNaN(a[i]!) || Number.isNaN(b[i]!)) continue;
    pairs.x.push(a[i]!);
    pairs.y.push(b[i]!);
    pairs.index.push(i);
  }
  return pairs;
}
