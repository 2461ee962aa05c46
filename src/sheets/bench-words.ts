import type { BenchJob } from "./bench-job.ts";
import { benchLengths } from "./bench-lengths.ts";
import { sessionWords } from "./session-words.ts";

/** Sentences of the Build sheet in the units and with the decimal mark of the job. */
export function benchWords({
  build,
  player,
  units = "us",
  decimalMark,
}: BenchJob): (sentence: string) => string {
  const local = sessionWords({ builds: [build], player, ...(decimalMark ? { decimalMark } : {}) });
  const { words } = benchLengths(units);
  return (sentence) => local(words(sentence));
}
