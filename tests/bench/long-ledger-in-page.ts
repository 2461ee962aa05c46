import { Readable } from "node:stream";
import exceljs from "exceljs";
import { readXlsx } from "hucre";
import type { CDPSession, Page } from "playwright-core";
import { openLedger, pressInLedger, writeIntoPage } from "../browser/ledger-in-page.ts";
import { openBrowser } from "../browser/open-browser.ts";
import { savedFile } from "../browser/page-file.ts";
import { servePage } from "../browser/serve-page.ts";
import { openWorkbench } from "../browser/workbench-page.ts";
import { longLedger } from "../ledger/long-ledger.ts";
import type { BenchLine } from "./run.ts";

const SHOTS = Number(process.env.SHOTS ?? 200_000);
const ROUNDS = 6;

/**
 * What a shop waits for in the page whose workbook holds 200,000 archived shots and the ledger of their sessions.
 * `seconds` pass on the clock; `busy` are those that the page itself worked, which a busy machine does not stretch.
 */
export async function* longLedgerInPage(): AsyncGenerator<BenchLine> {
  const plan = longLedger(SHOTS);
  const rows = plan.sheets[0]!.tables[0]!.area.rows - 1;
  const [served, browser] = await Promise.all([servePage(), openBrowser()]);
  try {
    const { page } = await openWorkbench(browser, served.address);
    const session = await page.context().newCDPSession(page);
    await session.send("Performance.enable", { timeDomain: "threadTicks" });
    const timed = async <T>(work: () => Promise<T>) => {
      const before = await busyTime(session);
      const start = performance.now();
      const found = await work();
      return {
        found,
        seconds: (performance.now() - start) / 1000,
        busy: (await busyTime(session)) - before,
      };
    };
    const line = (what: string, { seconds, busy }: { seconds: number; busy: number }, more = {}) => ({
      what,
      shots: SHOTS,
      ledgerRows: rows,
      seconds,
      busy,
      ...more,
    });
    yield line("both tables put into the page", await timed(() => writeIntoPage(page, plan)));
    await openLedger(page);
    await page.waitForTimeout(3000);
    const kept = [];
    for (let round = 0; round < ROUNDS; round++) {
      kept.push(await timed(() => pressInLedger(page, "#keep-in-ledger")));
      await page.waitForTimeout(1000);
      if (round < ROUNDS - 1) await page.evaluate(() => globalThis.workbench.grid.undo());
      await page.waitForTimeout(1000);
    }
    // The first one also fetches what the ledger takes, so it stands by itself; the worst is the worst of all.
    const sorted = kept.slice(1).sort((a, b) => a.seconds - b.seconds);
    const middle = sorted[Math.floor(sorted.length / 2)]!;
    yield line("a session kept below them, in the middle of those after the first", middle, {
      first: kept[0]!.seconds,
      worst: Math.max(...kept.map(({ seconds }) => seconds)),
      worstAfterTheFirst: sorted.at(-1)!.seconds,
      said: middle.found.said,
    });
    const again = await timed(() => pressInLedger(page, "#keep-in-ledger"));
    yield line("the same session once more", again, { said: again.found.said });
    yield line("a player looked back at", await timed(() => lookedBack(page)));
    yield line("the Shop sheet", await timed(() => shopSheet(page)));
    await page.waitForTimeout(2000);
    const saved = await timed(() => savedFile(page, 600_000));
    const { bytes } = saved.found;
    yield line("saved as .xlsx", saved, { megabytes: bytes.length / 1e6 });
    for (const [reader, read] of Object.entries(READERS)) {
      const start = performance.now();
      const counted = await read(bytes);
      // The headings, and the session that was kept above.
      if (counted["Shot archive"] !== SHOTS + 25 || counted.Ledger !== rows + 5)
        throw new Error(`by ${reader} the file holds ${JSON.stringify(counted)}`);
      yield { what: `the file opened by ${reader}`, seconds: (performance.now() - start) / 1000, counted };
    }
  } finally {
    await browser.close();
    served.close();
  }
}

/** How many rows each sheet of a file has, by the library that wrote it and by one that did not. */
const READERS: Readonly<Record<string, (bytes: Uint8Array) => Promise<Record<string, number>>>> = {
  hucre: async (bytes) => {
    const { sheets } = await readXlsx(bytes);
    return Object.fromEntries(sheets.map(({ name, rows }) => [name, rows.length]));
  },
  exceljs: async (bytes) => {
    const counted: Record<string, number> = {};
    // Row by row, for a workbook of this length does not fit into memory the way that it keeps cells.
    const reader = new exceljs.stream.xlsx.WorkbookReader(Readable.from([bytes]), {});
    for await (const sheet of reader) {
      let rows = 0;
      for await (const _ of sheet) rows++;
      // Its declared type leaves the name out.
      counted[(sheet as unknown as { readonly name: string }).name] = rows;
    }
    return counted;
  },
};

/** Seconds that the page's thread has worked. */
async function busyTime(session: CDPSession): Promise<number> {
  const { metrics } = await session.send("Performance.getMetrics");
  return metrics.find(({ name }) => name === "TaskDuration")!.value;
}

/** Until the first heading of now against then stands. */
async function lookedBack(page: Page): Promise<void> {
  await page.locator("#look-back").click();
  await page.locator(".ledger section h3").first().waitFor({ timeout: 120_000 });
}

async function shopSheet(page: Page): Promise<void> {
  await page.locator("#shop-sheet").click();
  const there = () => globalThis.workbench.workbook.getSheetByName("Shop") !== null;
  await page.waitForFunction(there, undefined, { timeout: 300_000 });
}
