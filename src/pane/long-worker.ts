import { unavailable } from "../outcome/problem.ts";
import { type LongOrder, longWork } from "./long-work.ts";
import type { WorkerSays } from "./run-long.ts";
import { textOfSource } from "./text-of-source.ts";

/**
 * The worker's script, a file of its own beside the page: reads one long table and is then ended by the page, which is
 * also how it is stopped. On a page that has no workers it only leaves its work there (`run-long.ts`).
 */
if (typeof document === "undefined") {
  addEventListener("message", ({ data }: MessageEvent<Asked>) => void read(data.source, data.order));
} else {
  globalThis.longWork = longWork;
}

interface Asked {
  readonly source: string | Blob;
  readonly order: LongOrder;
}

/** Milliseconds between two reports. */
const PAUSE = 100;

async function read(source: string | Blob, order: LongOrder): Promise<void> {
  try {
    const work = longWork(await textOfSource(source), order);
    let told = 0;
    for (;;) {
      const turn = work.next();
      if (turn.done) return say({ answer: turn.value });
      if (performance.now() - told < PAUSE) continue;
      told = performance.now();
      say({ step: turn.value });
    }
  } catch (error) {
    // Pure functions do not throw; memory that runs out, or a file that cannot be read, does.
    say({
      answer: unavailable(`The table could not be read: ${error instanceof Error ? error.message : error}.`),
    });
  }
}

function say(words: WorkerSays): void {
  postMessage(words);
}
