import { attack } from "../hostile/attack.ts";
import { shown } from "./beside.ts";
import type { BenchLine } from "./run.ts";

const INPUTS = 100_000;
const SLICE = 20_000;

/** Hostile tables by the ten thousand: how many were answered without an exception, a hang or a lost row. */
export async function* bench(): AsyncGenerator<BenchLine> {
  for (let from = 0; from < INPUTS; from += SLICE) {
    const { faults, longestMs, ...counts } = await attack(SLICE, from);
    yield {
      what: `hostile tables ${from} to ${from + SLICE - 1}`,
      ...counts,
      longestMs: shown(longestMs),
      faults: faults.length,
      first: faults.slice(0, 3).map((fault) => fault.slice(0, 300)),
      goal: 0,
      met: faults.length === 0,
    };
  }
}
