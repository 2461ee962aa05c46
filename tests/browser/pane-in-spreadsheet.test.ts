import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";
import { newService } from "../office-host/service.ts";
import { openBrowser } from "./open-browser.ts";
import { openPaneInSpreadsheet } from "./pane-in-spreadsheet.ts";

const PATIENCE = 60_000;

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
}, PATIENCE);
afterAll(() => browser?.close());

describe("the pane in the spreadsheet, under a strict policy", { timeout: PATIENCE }, () => {
  test("goes from a pasted table to sheets through the true client library", async () => {
    const service = newService();
    const { page, complaints, strange } = await openPaneInSpreadsheet(browser, service);
    await page.locator("#shots-text").fill(DEMO_TEXT);
    await page.locator("#make-sheets").click();
    await expect
      .poll(() => page.locator("[role=status]").first().textContent(), { timeout: 20_000 })
      .toMatch(/^Added Comparison/);
    expect(service.workbook.sheets.map(({ bag }) => bag.Name)).toEqual([
      "Sheet1",
      "Comparison",
      "Player",
      "Shots",
      "Workings",
    ]);
    expect(complaints).toEqual([]);
    expect(strange).toEqual([]);
  });

  test("takes the selected cells", async () => {
    const service = newService();
    const { page, complaints } = await openPaneInSpreadsheet(browser, service);
    const rows = DEMO_TEXT.split("\n").map((line) => line.split("\t").map((cell) => `'${cell}`));
    await page.evaluate(async (entries) => {
      await Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getActiveWorksheet();
        sheet.getRangeByIndexes(3, 1, entries.length, entries[0]!.length).formulas = entries;
        await context.sync();
      });
    }, rows);
    service.workbook.selection = [{ row: 5, column: 2, rows: 1, columns: 1 }];
    await page.getByRole("button", { name: "Take the selected cells" }).click();
    await expect.poll(() => page.locator("#shots-text").inputValue()).toBe(DEMO_TEXT);
    expect(complaints).toEqual([]);
  });
});
