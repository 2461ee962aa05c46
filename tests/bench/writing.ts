import { execFile } from "node:child_process";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { median, shown } from "./beside.ts";
import type { BenchLine } from "./run.ts";
import type { Written } from "./write-shots.ts";

const SHOTS = 100_000;
const ROUNDS = 3;

/** A sheet of 100,000 shots as a file, each write in a process of its own, so that its memory is its own. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const own: Written[] = [];
  const other: Written[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    own.push(await written("own"));
    other.push(await written("exceljs"));
  }
  const of = (list: readonly Written[], figure: keyof Written) => median(list.map((one) => one[figure]));
  const faster = of(other, "ms") / of(own, "ms");
  const memory = of(own, "peakMb") / of(other, "peakMb");
  yield {
    what: "100,000 shots as .xlsx beside exceljs, times as fast",
    ratio: shown(faster),
    ownMs: shown(of(own, "ms")),
    otherMs: shown(of(other, "ms")),
    rounds: ROUNDS,
    goal: "at least 3",
    met: faster >= 3,
  };
  yield {
    what: "100,000 shots as .xlsx beside exceljs, peak memory of the process",
    ratio: shown(memory),
    ownMb: Math.round(of(own, "peakMb")),
    otherMb: Math.round(of(other, "peakMb")),
    ownBeforeMb: Math.round(of(own, "beforeMb")),
    otherBeforeMb: Math.round(of(other, "beforeMb")),
    goal: "at most 0.5",
    met: memory <= 0.5,
  };
}

async function written(how: "own" | "exceljs"): Promise<Written> {
  const script = fileURLToPath(new URL("./write-shots.ts", import.meta.url));
  const words = ["--import", "tsx", script, how, String(SHOTS)];
  const { stdout } = await promisify(execFile)(process.execPath, words);
  return JSON.parse(stdout);
}
