import { max, mean, median, min, sampleStandardDeviation } from "simple-statistics";
import { compareBuilds } from "../../src/fitting/compare-builds.ts";
import { sessionOf } from "../../src/fitting/session.ts";
import { beside } from "./beside.ts";
import { measuredTable } from "./measured-table.ts";
import type { BenchLine } from "./run.ts";

const SHOTS = 100_000;

/** Twelve metrics of eight builds: count, mean, spread, median, least and greatest, and our limits on top. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const table = measuredTable(SHOTS);
  const general = () => {
    const byBuild = new Map<string, number[]>();
    table.build.forEach((name, shot) => {
      const places = byBuild.get(name);
      if (places) places.push(shot);
      else byBuild.set(name, [shot]);
    });
    return [...byBuild.values()].map((places) =>
      [...table.values.values()].map((column) => {
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
