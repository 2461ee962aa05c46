import { max, mean, median, min, sampleStandardDeviation } from "simple-statistics";
import { compareBuilds } from "../../src/fitting/compare-builds.ts";
import { sessionOf } from "../../src/fitting/session.ts";
import { METRICS, type MetricKey } from "../../src/shots/metrics.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";
import { seededRandom } from "../../src/stats/seeded-random.ts";
import { beside } from "./beside.ts";
import type { BenchLine } from "./run.ts";

const SHOTS = 100_000;
const KEYS = METRICS.slice(0, 12).map((metric) => metric.key);

/** Twelve metrics of eight builds: count, mean, spread, median, least and greatest, and our limits on top. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const table = measured(SHOTS);
  const general = () => {
    const byBuild = new Map<string, number[]>();
    table.build.forEach((name, shot) => {
      const places = byBuild.get(name);
      if (places) places.push(shot);
      else byBuild.set(name, [shot]);
    });
    return [...byBuild.values()].map((places) =>
      KEYS.map((key) => {
        const column = table.values.get(key)!;
        const values = places.map((shot) => column[shot]!).filter((value) => !Number.isNaN(value));
        return [
          values.length,
          mean(values),
          sampleStandardDeviation(values),
          median(values),
          min(values),
          max(values),
        ];
      }),
    );
  };
  // A fresh table each time, so that nothing kept from the round before helps.
  const session = sessionOf(table);
  const own = () => compareBuilds({ ...session, table: { ...table } });
  const times = beside(own, general);
  yield {
    what: "summaries of 12 metrics by 8 builds over 100,000 shots beside simple-statistics",
    ...times,
    goal: "below 1",
    met: times.ratio < 1,
  };
}

function measured(size: number): ShotTable {
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
