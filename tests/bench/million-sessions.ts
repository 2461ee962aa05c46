import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import type { Row } from "../../src/ledger/cell.ts";
import { ledgerParquet } from "../../src/ledger/ledger-parquet.ts";
import { answer } from "../ledger/demo-rows.ts";
import { simulatedLedger } from "../ledger/simulated-ledger.ts";
import type { BenchLine } from "./run.ts";

/** So many sessions a file; only one file's rows are in memory at a time. */
const SLICE = 20_000;
const SESSIONS = Number(process.env.SESSIONS ?? 1_000_000);

/** What README.md shows: each build's sessions, wins and carry, over all files of a chain. */
export const QUERY = `select build, count(distinct session)::double as sessions,
  count(*) filter (chosen)::double as wins, avg(carryMean) as carry
from FILES group by build order by build`;

/** A chain's sessions as files, asked by an engine; its answer to one file in the middle is held against our own count. */
export async function* millionSessions(): AsyncGenerator<BenchLine> {
  const folder = mkdtempSync(join(tmpdir(), "ledger-"));
  const slices = Math.ceil(SESSIONS / SLICE);
  const sliceOf = (slice: number) =>
    simulatedLedger(Math.min(SLICE, SESSIONS - slice * SLICE), 1 + slice, slice * SLICE);
  try {
    let start = performance.now();
    let [written, bytes] = [0, 0];
    for (let slice = 0; slice < slices; slice++) {
      const rows = sliceOf(slice);
      const file = answer(await ledgerParquet(rows));
      writeFileSync(join(folder, `slice-${slice}.parquet`), file);
      written += rows.length;
      bytes += file.length;
    }
    yield {
      what: "a chain's sessions drawn and written as Parquet",
      sessions: SESSIONS,
      rows: written,
      files: slices,
      megabytes: bytes / 1e6,
      seconds: (performance.now() - start) / 1000,
      mostMegabytesHeld: process.resourceUsage().maxRSS / 1000,
    };
    const connection = await (await DuckDBInstance.create(":memory:")).connect();
    const ask = async (query: string, files: string) =>
      (await connection.runAndReadAll(query.replace("FILES", `'${join(folder, files)}'`))).getRowObjectsJS();
    start = performance.now();
    const all = await ask(QUERY, "*.parquet");
    const seconds = (performance.now() - start) / 1000;
    const [count] = await ask(
      "select count(distinct session)::double as sessions, count(*)::double as rows from FILES",
      "*.parquet",
    );
    if (count!.sessions !== SESSIONS || count!.rows !== written) {
      throw new Error(
        `the engine found ${JSON.stringify(count)} of ${SESSIONS} sessions and ${written} rows`,
      );
    }
    yield { what: "the query over all of them", sessions: SESSIONS, builds: all.length, seconds };
    const middle = Math.floor(slices / 2);
    const theirs = await ask(QUERY, `slice-${middle}.parquet`);
    const ours = countedByUs(sliceOf(middle));
    const furthest = Math.max(...ours.map(({ carry }, i) => Math.abs(Number(theirs[i]?.carry) / carry - 1)));
    const same = ours.every(
      ({ build, sessions, wins }, i) =>
        theirs[i]?.build === build && theirs[i].sessions === sessions && theirs[i].wins === wins,
    );
    if (!same || theirs.length !== ours.length || !(furthest < 1e-12)) {
      throw new Error("the engine and we do not count the same");
    }
    yield { what: "one file, counted by the engine and by us", file: middle, same, furthestMean: furthest };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The same query over rows, by hand. */
function countedByUs(rows: readonly Row[]) {
  return [...new Set(rows.map(({ build }) => String(build)))].sort().map((build) => {
    const own = rows.filter((row) => row.build === build);
    return {
      build,
      sessions: new Set(own.map(({ session }) => session)).size,
      wins: own.filter(({ chosen }) => chosen).length,
      carry: own.reduce((sum, row) => sum + Number(row.carryMean), 0) / own.length,
    };
  });
}
