import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import { ledgerParquet } from "../../src/ledger/ledger-parquet.ts";
import { neverWon } from "../../src/ledger/never-won.ts";
import { sessionsOf } from "../../src/ledger/sessions-of.ts";
import { fillArchive, openLedger, pressInLedger } from "../browser/ledger-in-page.ts";
import { openBrowser } from "../browser/open-browser.ts";
import { servePage } from "../browser/serve-page.ts";
import { openWorkbench } from "../browser/workbench-page.ts";
import { answer } from "../ledger/demo-rows.ts";
import { simulatedLedger } from "../ledger/simulated-ledger.ts";
import type { BenchLine } from "./run.ts";

const SLICE = 20_000;
const SESSIONS = Number(process.env.SESSIONS ?? 1_000_000);
const WON = `select build, count(distinct session)::double as sessions, count(*) filter (chosen)::double as wins,
  avg(carryMean) as carry from FILES group by build order by build`;

/** A chain's million sessions asked by an engine, held against our own count of a slice; and appending in the page. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const folder = mkdtempSync(join(tmpdir(), "ledger-"));
  try {
    let start = performance.now();
    const first = simulatedLedger(Math.min(SLICE, SESSIONS), 1);
    for (let done = 0; done < SESSIONS; done += SLICE) {
      const rows =
        done === 0 ? first : simulatedLedger(Math.min(SLICE, SESSIONS - done), 1 + done / SLICE, done);
      writeFileSync(join(folder, `slice-${done / SLICE}.parquet`), answer(await ledgerParquet(rows)));
    }
    yield {
      what: "sessions written as Parquet",
      sessions: SESSIONS,
      seconds: (performance.now() - start) / 1000,
    };
    const connection = await (await DuckDBInstance.create(":memory:")).connect();
    const ask = async (files: string) =>
      (await connection.runAndReadAll(WON.replace("FILES", `'${join(folder, files)}'`))).getRowObjectsJS();
    start = performance.now();
    const all = await ask("*.parquet");
    yield {
      what: "the same query over all",
      seconds: (performance.now() - start) / 1000,
      builds: all.length,
    };
    const sample = await ask("slice-0.parquet");
    const ours = [...new Set(first.map(({ build }) => String(build)))].sort().map((build) => {
      const rows = first.filter((row) => row.build === build);
      const carry = rows.reduce((sum, row) => sum + Number(row.carryMean), 0) / rows.length;
      const wins = rows.filter(({ chosen }) => chosen).length;
      return { build, sessions: new Set(rows.map(({ session }) => session)).size, wins, carry };
    });
    const same = ours.every((one, i) => {
      const other = sample[i]!;
      const near = Math.abs(Number(other.carry) - one.carry) < 1e-9 * one.carry;
      return near && other.build === one.build && other.sessions === one.sessions && other.wins === one.wins;
    });
    if (!same) throw new Error("the engine and we do not count the same");
    yield {
      what: "a slice, counted by the engine and by us",
      same,
      neverWon: neverWon(sessionsOf(first)).length,
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
  if (process.env.PAGE === "no") return;
  const [served, browser] = await Promise.all([servePage(), openBrowser()]);
  try {
    const { page } = await openWorkbench(browser, served.address);
    await openLedger(page);
    await pressInLedger(page, "#keep-in-ledger");
    await pressInLedger(page, "#forget-player");
    const filled = await fillArchive(page, 200_000);
    const { said, took } = await pressInLedger(page, "#keep-in-ledger");
    yield {
      what: "a session kept below 200,000 archived shots",
      seconds: took / 1000,
      filledIn: filled / 1000,
      said,
    };
  } finally {
    await browser.close();
    served.close();
  }
}
