import { invalid, type Outcome, unavailable } from "../outcome/problem.ts";
import { inSlices } from "../slices/in-slices.ts";
import { count } from "./count.ts";
import type { LongAnswer, LongOrder, LongStep } from "./long-work.ts";
import { textOfSource } from "./text-of-source.ts";

export type WorkerSays = { readonly step: LongStep } | { readonly answer: Outcome<LongAnswer> };

/** The worker's script leaves its work here where a page runs it: one script for both, so that no part is sent twice. */
declare global {
  var longWork: ((text: string, order: LongOrder) => Generator<LongStep, Outcome<LongAnswer>>) | undefined;
}

const SCRIPT = "long-worker.js";

/** Longer texts are refused at the door: their cells would take more memory than a page is given, about 4 GB. */
const MOST_LETTERS = 200_000_000;

/**
 * Reads a long table beside the page, in a worker; in slices on the page itself where none can be started. Answers null
 * once it was stopped.
 */
export async function runLong(
  source: string | Blob,
  order: LongOrder,
  told: (step: LongStep) => void,
  stop: AbortSignal,
): Promise<Outcome<LongAnswer> | null> {
  const letters = typeof source === "string" ? source.length : source.size;
  if (letters > MOST_LETTERS) return invalid(tooLong(letters));
  const worker = startWorker();
  const found = worker ? await inWorker(worker, source, order, told, stop) : NOT_STARTED;
  if (found !== NOT_STARTED) return found;
  await fetchScript();
  return inSlices(globalThis.longWork!(await textOfSource(source), order), told, stop);
}

const NOT_STARTED = Symbol("not started");

async function inWorker(
  worker: Worker,
  source: string | Blob,
  order: LongOrder,
  told: (step: LongStep) => void,
  stop: AbortSignal,
): Promise<Outcome<LongAnswer> | null | typeof NOT_STARTED> {
  let started = false;
  try {
    return await new Promise((resolve) => {
      stop.addEventListener("abort", () => resolve(null));
      worker.onmessage = ({ data }: MessageEvent<WorkerSays>) => {
        started = true;
        if ("step" in data) told(data.step);
        else resolve(data.answer);
      };
      // Before the first word: its script was not had or not allowed. After it: it broke down at work.
      worker.onerror = () => resolve(started ? unavailable(OUT_OF_MEMORY) : NOT_STARTED);
      worker.postMessage({ source, order });
    });
  } finally {
    worker.terminate();
  }
}

/** Null where this place has no workers, or none of this address. */
function startWorker(): Worker | null {
  try {
    return new Worker(SCRIPT);
  } catch {
    return null;
  }
}

/** Fetches the worker's script for the page itself, which reads in slices where no worker can fetch it any more. */
export function fetchScript(): Promise<void> {
  if (globalThis.longWork) return Promise.resolve();
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${SCRIPT} cannot be had`));
    script.src = SCRIPT;
    document.head.append(script);
  });
}

const OUT_OF_MEMORY = `The table could not be read beside the page: it may be more than this place has memory for. Up to ${count(MOST_LETTERS / 1e6, "million letter")} are read where there is enough; a table in parts, one player or one year each, would do.`;

function tooLong(letters: number): string {
  return `The table has ${Math.round(letters / 1e6)} million letters; at most ${MOST_LETTERS / 1e6} million can be read at once, some 2 million shots of twelve columns. A table in parts, one player or one year each, would do.`;
}
