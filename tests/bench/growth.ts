import { compareBuilds } from "../../src/fitting/compare-builds.ts";
import { sessionOf } from "../../src/fitting/session.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { ols } from "../../src/stats/index.ts";
import { median, milliseconds, shown } from "./beside.ts";
import { manyShots } from "./many-shots.ts";
import type { BenchLine } from "./run.ts";

const SIZES = [1000, 3000, 10_000, 30_000, 100_000, 300_000, 1_000_000];
/** Small tables are read again and again until as many shots have gone by, for a clock says little of milliseconds. */
const SHOTS_A_ROUND = 100_000;

/** Time from text to summaries as tables grow: the slope of log time over log shots is 1 where it is linear. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const times: number[] = [];
  fromTextToSummaries(manyShots(SHOTS_A_ROUND));
  for (const size of SIZES) {
    const text = manyShots(size);
    const repeats = Math.max(1, Math.ceil(SHOTS_A_ROUND / size));
    const rounds = Array.from({ length: size > SHOTS_A_ROUND ? 1 : 3 }, () =>
      milliseconds(() => {
        for (let repeat = 0; repeat < repeats; repeat++) fromTextToSummaries(text);
      }),
    );
    times.push(median(rounds) / repeats);
    yield {
      what: "from text to summaries",
      shots: size,
      ms: shown(times.at(-1)!),
      microsecondsAShot: shown((1000 * times.at(-1)!) / size),
    };
  }
  const [all, large] = [slopeFrom(0, times), slopeFrom(SIZES.indexOf(10_000), times)];
  yield {
    what: "slope of log time over log shots, 1,000 to 1,000,000",
    slope: shown(all),
    // What a call costs whatever its size flatters the slope; above 10,000 shots it no longer counts.
    slopeFrom10000: shown(large),
    goal: "at most 1.1",
    met: all <= 1.1 && large <= 1.1,
  };
}

function slopeFrom(first: number, times: readonly number[]): number {
  const line = ols(SIZES.slice(first).map(Math.log), times.slice(first).map(Math.log));
  if (isProblem(line)) throw new Error(line.message);
  return line.slope.value;
}

function fromTextToSummaries(text: string): void {
  const table = readShots(text);
  if (isProblem(table)) throw new Error(table.message);
  compareBuilds(sessionOf(table));
}
