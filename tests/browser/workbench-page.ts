import type { Browser, Page } from "playwright-core";
import type { Host } from "../../src/hosts/host.ts";
import type { Grid, Workbook } from "../../src/hosts/workbench/grid.ts";
import type { WorkbookPlan } from "../../src/sheets/plan.ts";

import { tellForbidden } from "./tell-forbidden.ts";

/** What the page holds out to its tests. */
interface Workbench {
  readonly grid: Grid;
  readonly workbook: Workbook;
  readonly host: Host;
  readonly plan: () => WorkbookPlan;
}

declare global {
  var workbench: Workbench;
}

/** Where the cells are drawn; the formula bar has canvases of its own. */
const SHEET = "canvas[id^=univer-sheet-main-canvas]";

export interface OpenPage {
  readonly page: Page;
  /** Errors on the console or uncaught, and requests that left the page's own address. */
  readonly complaints: string[];
}

/** Opens the page and waits until the grid is ready. `before` runs in it ahead of its own scripts. */
export async function openWorkbench(
  browser: Browser,
  address: string,
  { locale = "en-GB", before }: { readonly locale?: string; readonly before?: () => void } = {},
): Promise<OpenPage> {
  const page = await browser.newPage({ viewport: { width: 1400, height: 850 }, locale });
  if (before) await page.addInitScript(before);
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(address) && !/^(data|blob):/.test(url)) complaints.push(`asked for ${url}`);
  });
  await page.addInitScript(tellForbidden);
  await page.goto(address);
  await page.waitForFunction(() => globalThis.workbench !== undefined);
  await page.locator(SHEET).waitFor();
  return { page, complaints };
}

/** Types into a cell as a user does, by the keyboard, and waits for the answer. */
export async function typeInto(page: Page, cell: string, text: string): Promise<unknown> {
  await page.evaluate((name) => {
    const { workbook } = globalThis.workbench;
    workbook.setActiveRange(workbook.getActiveSheet().getRange(name));
  }, cell);
  await page.locator(SHEET).focus();
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
  // On a busy machine the grid takes the letters in its own time.
  await page.waitForFunction((name) => {
    const range = globalThis.workbench.workbook.getActiveSheet().getRange(name);
    return range.getFormula() !== "" || (range.getRawValue() ?? "") !== "";
  }, cell);
  return rawValue(page, cell);
}

/** What a cell of the sheet in view holds, once all formulas have their answers. */
export async function rawValue(page: Page, cell: string): Promise<unknown> {
  return page.evaluate(async (name) => {
    const { grid, workbook } = globalThis.workbench;
    await grid.getFormula().onCalculationResultApplied();
    return workbook.getActiveSheet().getRange(name).getRawValue();
  }, cell);
}

/** Clicks into the middle of a cell, as a user does, having turned to its sheet. */
export async function clickCell(page: Page, sheet: string, cell: string): Promise<void> {
  const { x, y, width, height } = await page.evaluate(
    ([sheetName, name]) => {
      const found = globalThis.workbench.workbook.getSheetByName(sheetName!)!.activate();
      const { x, y, width, height } = found.getRange(name!).getCellRect();
      return { x, y, width, height };
    },
    [sheet, cell],
  );
  const canvas = await page.locator(SHEET).boundingBox();
  // The grid turns to another sheet in its own time, and takes two quick clicks for a double one.
  await page.waitForTimeout(600);
  await page.mouse.click(canvas!.x + x + width / 2, canvas!.y + y + height / 2);
}
