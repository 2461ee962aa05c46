import type { Browser, Page } from "playwright-core";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";
import { openBrowser } from "../browser/open-browser.ts";
import { openAll, openPane } from "../browser/pane-page.ts";
import { servePage } from "../browser/serve-page.ts";
import { openWorkbench } from "../browser/workbench-page.ts";
import type { BenchLine } from "./run.ts";

const SHOTS = 200;
const ADDED = 60;

/** How long a person waits: for a redrawn pane after a new shot, its chances, its words, and for the demo's sheets. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const browser = await openBrowser();
  try {
    yield* newShots(browser);
    yield await pasteToSheets(browser);
  } finally {
    await browser.close();
  }
}

async function* newShots(browser: Browser): AsyncGenerator<BenchLine> {
  const page = await openPane(browser, { height: 2000 });
  const [headings, ...rows] = DEMO_TEXT.split("\n");
  const shots = Array.from({ length: SHOTS + ADDED }, (_, i) => alike(rows[(7 * i) % rows.length]!, i));
  await bring(page, [headings, ...shots.slice(0, SHOTS)].join("\n"));
  await openAll(page);
  await page.locator("#headline").waitFor();
  const devtools = await page.context().newCDPSession(page);
  await devtools.send("Performance.enable");
  const scripting = async () => {
    const { metrics } = await devtools.send("Performance.getMetrics");
    return metrics.find(({ name }) => name === "ScriptDuration")!.value * 1000;
  };
  const before = await scripting();
  const times = [];
  for (let n = SHOTS + 1; n <= SHOTS + ADDED; n++)
    times.push(await bring(page, [headings, ...shots.slice(0, n)].join("\n")));
  const spent = (await scripting()) - before;
  for (const what of ["redrawn", "judged", "worded"] as const) {
    const sorted = times.map((time) => time[what]).sort((a, b) => a - b);
    const [median, of95, most] = [0.5, 0.95, 1].map((part) => sorted[Math.ceil(part * ADDED) - 1]!);
    const goal = what === "worded" ? {} : { goal: 100, met: most! <= 100 };
    yield {
      measure: `from a new shot to ${what}, ms`,
      shots: SHOTS,
      added: ADDED,
      median,
      of95,
      most,
      ...goal,
    };
  }
  yield { measure: "script of all three, ms a shot", mean: Math.round(spent / ADDED) };
}

/** The shot under another build's name: where builds are alike each shot moves their chances, so that all is drawn. */
function alike(row: string, shot: number): string {
  return (
    ["95 g high-launch", "105 g mid-launch", "120 g low-launch"][(Math.imul(shot, 2654435761) >>> 8) % 3] +
    row.slice(row.search(/[\t,;]/))
  );
}

/** Milliseconds from a new shot until these stand: figures and group; chances and what to hit next; the words. */
interface Waits {
  readonly redrawn: number;
  readonly judged: number;
  readonly worded: number;
}

/** Pictures that change with each shot, by the step that draws them; the flights come last, with the words. */
const SHOWN = { redrawn: "groups", judged: "chances", worded: "flights" };

/** Sets the table and waits until each of these has changed and been painted. */
function bring(page: Page, text: string): Promise<Waits> {
  return page.locator("#shots-text").evaluate(
    async (element, [table, shown]) => {
      const box = element as HTMLTextAreaElement;
      const start = performance.now();
      const waits = Object.entries(shown).map(async ([what, id]) => {
        const picture = document.querySelector(`[aria-labelledby^=${id}]`)?.closest(".picture");
        if (picture) {
          await new Promise<void>((resolve, reject) => {
            setTimeout(() => reject(new Error(`${id} was not drawn anew`)), 5_000);
            new MutationObserver((_, watch) => {
              watch.disconnect();
              resolve();
            }).observe(picture, { subtree: true, childList: true, attributes: true, characterData: true });
          });
        }
        await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
        return [what, Math.round(performance.now() - start)];
      });
      box.value = table;
      box.dispatchEvent(new Event("input", { bubbles: true }));
      return Object.fromEntries(await Promise.all(waits));
    },
    [text, SHOWN] as const,
  );
}

async function pasteToSheets(browser: Browser): Promise<BenchLine> {
  const served = await servePage();
  try {
    const { page } = await openWorkbench(browser, served.address);
    await page.locator("#pane #shots-text").waitFor();
    const start = performance.now();
    await page.locator("#pane #shots-text").fill(DEMO_TEXT);
    await page.locator("#make-sheets").click();
    await page.locator("#pane [role=status]", { hasText: "Added" }).waitFor();
    return {
      measure: "from paste to finished sheets in the page, ms",
      took: Math.round(performance.now() - start),
    };
  } finally {
    served.close();
  }
}
