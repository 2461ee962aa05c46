import type { Browser, Page } from "playwright-core";
import { manyShots } from "../bench/many-shots.ts";

/** Pastes a made-up table of so many shots into the pane, or a text repeated so many times. */
export async function pasteMany(page: Page, shots: number, line = ""): Promise<void> {
  const text = line === "" ? manyShots(shots) : line.repeat(shots);
  // In parts, for a message to the browser may not be of any length; put together before the clock runs.
  await page.evaluate(() => {
    globalThis.pasted = [];
  });
  const LETTERS = 5_000_000;
  for (let from = 0; from < text.length; from += LETTERS) {
    await page.evaluate((part) => globalThis.pasted.push(part), text.slice(from, from + LETTERS));
  }
  await page.evaluate(() => {
    globalThis.clipboard = new DataTransfer();
    globalThis.clipboard.setData("text/plain", globalThis.pasted.join(""));
    globalThis.pasted = [];
  });
  await page.waitForTimeout(100);
  await page.locator("#shots-text").evaluate((box) => {
    const { clipboard: clipboardData } = globalThis;
    performance.mark("paste");
    box.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  });
}

/** From here on notes what the page's own thread does. */
export async function watchTasks(browser: Browser, page: Page): Promise<void> {
  await browser.startTracing(page, {
    categories: ["disabled-by-default-devtools.timeline", "blink.user_timing"],
  });
}

/**
 * The longest that the page's own thread was busy without a turn since the paste, milliseconds of processor time: what
 * else the machine does adds nothing to it. Ends the watch.
 */
export async function longestTask(browser: Browser): Promise<number> {
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as {
    traceEvents: TraceEvent[];
  };
  const paste = traceEvents.find(({ name }) => name === PASTE);
  if (!paste) throw new Error("the paste is not in the record");
  const tasks = traceEvents.filter(
    ({ name, pid, tid, ts, dur = 0 }) =>
      name === "RunTask" && pid === paste.pid && tid === paste.tid && ts + dur >= paste.ts,
  );
  return Math.max(...tasks.map(({ tdur = 0 }) => tdur)) / 1000;
}

const PASTE = "paste";

/** An entry of the browser's record, times in microseconds. */
interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  /** Processor time of the thread. */
  readonly tdur?: number;
}

declare global {
  var pasted: string[];
  var clipboard: DataTransfer;
}
