import type { Page } from "playwright-core";
import { SHOTS } from "../../src/ledger/schema.ts";
import type { WorkbookPlan } from "../../src/sheets/plan.ts";
import "./workbench-page.ts";

/** Opens the ledger's part of the pane. */
export async function openLedger(page: Page): Promise<void> {
  await page.locator("#ledger summary").click();
  await page.locator("#keep-in-ledger").waitFor();
}

/** Presses a button of the ledger and answers what it said, and how long that took, milliseconds. */
export async function pressInLedger(page: Page, button: string): Promise<{ said: string; took: number }> {
  return page.evaluate(async (id) => {
    const said = document.querySelector("#ledger-said")!;
    const start = performance.now();
    document.querySelector<HTMLButtonElement>(id)!.click();
    for (;;) {
      await new Promise((resolve) => setTimeout(resolve, 4));
      const words = said.textContent ?? "";
      if (words !== "" && !words.startsWith("Working"))
        return { said: words, took: performance.now() - start };
    }
  }, button);
}

/** Fills the archive of the page with so many rows below those that stand there; answers how long that took. */
export async function fillArchive(page: Page, rows: number): Promise<number> {
  return page.evaluate(
    async ([name, key, count]) => {
      const { host } = globalThis.workbench;
      const table = (await host.tableCells(name, [key])) as { headings: string[]; rows: unknown[][] };
      const append = Array.from({ length: count }, (_, i) =>
        table.headings.map((heading, c) => {
          if (heading === key) return `archived-${i}`;
          if (heading === "Session") return `archived-${Math.floor(i / 24)}`;
          if (heading === "Build") return `Build ${i % 4}`;
          if (heading === "Keep") return true;
          return heading === "Time" ? null : Math.round(1000 * Math.sin(i * 31 + c)) / 10;
        }),
      );
      const start = performance.now();
      const done = await host.changeTables(
        [
          {
            table: name,
            expected: { headings: table.headings, rows: table.rows.length },
            rename: [],
            columns: [],
            update: [],
            remove: [],
            append,
          },
        ],
        null,
      );
      if ("message" in done) throw new Error(done.message);
      return performance.now() - start;
    },
    [SHOTS.table, SHOTS.columns[0]!.heading, rows] as const,
  );
}

/** How many rows a table of the page has. */
export async function rowsInPage(page: Page, table: string): Promise<number> {
  return page.evaluate(async (name) => {
    const found = await globalThis.workbench.host.tableCells(name, []);
    if (!found || "message" in found) return -1;
    return found.rows.length;
  }, table);
}

/** Adds the plan's sheets to the workbook of the page; answers how long that took, milliseconds. */
export async function writeIntoPage(page: Page, plan: WorkbookPlan): Promise<number> {
  return page.evaluate(async (given) => {
    const start = performance.now();
    const done = await globalThis.workbench.host.write(given);
    if ("message" in done) throw new Error(done.message);
    return performance.now() - start;
  }, plan);
}
