import { rm } from "node:fs/promises";
import { buildAddin, builtFiles } from "../browser/build-addin.ts";
import { openBrowser } from "../browser/open-browser.ts";
import { openPaneInSpreadsheet } from "../browser/pane-in-spreadsheet.ts";
import { newService } from "../office-host/service.ts";
import { median } from "./beside.ts";
import type { BenchLine } from "./run.ts";

const ROUNDS = 7;

/**
 * How long the built pane takes in the spreadsheet from the opening of its page: to the first paint, and until a table
 * can be pasted. The platform's own script, from npm here, is in both.
 */
export async function* bench(): AsyncGenerator<BenchLine> {
  const folder = await buildAddin();
  const browser = await openBrowser();
  try {
    const files = await builtFiles(folder);
    const paints: number[] = [];
    const readies: number[] = [];
    for (let round = 0; round < ROUNDS; round++) {
      const { page } = await openPaneInSpreadsheet(browser, newService(), files);
      const [paint, ready] = await page.evaluate(() => [
        performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? Number.NaN,
        performance.now(),
      ]);
      paints.push(paint!);
      readies.push(ready!);
      await page.context().close();
    }
    yield {
      what: "pane in the spreadsheet, from opening its page, ms in the median",
      firstPaint: Math.round(median(paints)),
      ready: Math.round(median(readies)),
      rounds: ROUNDS,
    };
  } finally {
    await browser.close();
    await rm(folder, { recursive: true });
  }
}
