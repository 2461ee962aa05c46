import { METRICS, type MetricKey } from "../../src/shots/metrics.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";
import { seededRandom } from "../../src/stats/seeded-random.ts";

const KEYS = METRICS.slice(0, 12).map((metric) => metric.key);

/** A table of twelve metrics and eight builds without a text that it was read from. */
export function measuredTable(size: number): ShotTable {
  const random = seededRandom(5);
  const values = new Map<MetricKey, Float64Array>(
    KEYS.map((key) => [key, Float64Array.from({ length: size }, () => 100 + random.normal())]),
  );
  const blank = new Array<string>(size).fill("");
  return {
    size,
    row: Array.from({ length: size }, (_, shot) => shot + 2),
    build: Array.from({ length: size }, (_, shot) => `Build ${1 + (shot % 8)}`),
    club: blank,
    shot: blank,
    time: blank,
    keep: new Array<boolean>(size).fill(true),
    values,
    extras: [],
    columns: [],
    problems: [],
    skipped: [],
    notes: [],
  };
}
