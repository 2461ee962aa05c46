import { readdirSync, readFileSync } from "node:fs";
import { longestTask, pasteMany, watchTasks } from "../browser/long-table.ts";
import { openBrowser } from "../browser/open-browser.ts";
import { servePage } from "../browser/serve-page.ts";
import { openWorkbench } from "../browser/workbench-page.ts";
import type { BenchLine } from "./run.ts";

const SIZES = [200_000, 1_000_000];
const GOAL = 100;

/** A paste of up to a million shots into the pane: how long until the answer stands, and how long the page is held. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const served = await servePage();
  try {
    for (const shots of SIZES) {
      const browser = await openBrowser();
      try {
        const { page } = await openWorkbench(browser, served.address);
        await page.locator("#pane #shots-text").waitFor();
        // What the page does by itself on opening is over by then.
        await page.waitForTimeout(3000);
        const before = peakMegabytes();
        await watchTasks(browser, page);
        await pasteMany(page, shots);
        const start = performance.now();
        await page.locator("#long-table .headline, #long-table .problem").waitFor({ timeout: 600_000 });
        const took = performance.now() - start;
        const answer = await page.locator("#long-table p:not(:empty)").nth(1).textContent();
        const held = await longestTask(browser);
        yield {
          what: "from a paste to the answer in the pane",
          shots,
          seconds: Math.round(took / 100) / 10,
          longestTaskMs: Math.round(held),
          peakMbOfThePagesProcess: peakMegabytes(),
          peakMbBefore: before,
          answer,
          goal: `no task above ${GOAL} ms of processor time on the page's thread`,
          met: held <= GOAL,
        };
      } finally {
        await browser.close();
      }
    }
  } finally {
    served.close();
  }
}

/** The most memory that any process started from here has held; Linux only, null elsewhere. */
function peakMegabytes(): number | null {
  try {
    const parents = new Map<number, number>();
    const peaks = new Map<number, number>();
    for (const name of readdirSync("/proc")) {
      if (!/^\d+$/.test(name)) continue;
      const status = statusOf(name);
      parents.set(Number(name), Number(/^PPid:\s+(\d+)/m.exec(status)?.[1]));
      peaks.set(Number(name), Number(/^VmHWM:\s+(\d+)/m.exec(status)?.[1] ?? 0));
    }
    const ours = (pid: number): boolean =>
      pid > 1 && (parents.get(pid) === process.pid || ours(parents.get(pid) ?? 0));
    return Math.round(Math.max(...[...peaks].filter(([pid]) => ours(pid)).map(([, peak]) => peak)) / 1024);
  } catch {
    return null;
  }
}

/** Empty where the process has ended meanwhile. */
function statusOf(pid: string): string {
  try {
    return readFileSync(`/proc/${pid}/status`, "utf8");
  } catch {
    return "";
  }
}
