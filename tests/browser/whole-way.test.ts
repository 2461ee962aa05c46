import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type ComparisonJson, comparisonJson } from "../../src/fitting/comparison-json.ts";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";
import { sessionOf } from "../../src/fitting/session.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import type { SheetPlan } from "../../src/sheets/plan.ts";
import { METRICS } from "../../src/shots/metrics.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";
import { contentsOfPlan } from "../contents-of-plan.ts";
import { contentsOfXlsx } from "../hosts/file/contents-of-xlsx.ts";
import { cellAt, findText } from "../sheets/cell-at.ts";
import { oddSession } from "../sheets/odd-session.ts";
import { disagreements, figuresOfJson, figuresOfWorkings } from "../sheets/workings-figures.ts";
import { aroundPage } from "./around-page.ts";
import { walkByKeyboard } from "./keyboard-walk.ts";
import { savedFile } from "./page-file.ts";
import { withinEngine } from "./within-engine.ts";
import { openWorkbench } from "./workbench-page.ts";

const open = aroundPage();

/** Pastes text as a person does: what stands there is taken out, and the clipboard comes in its place. */
async function paste(page: Page, text: string): Promise<void> {
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
  const box = page.locator("#shots-text");
  await box.click();
  await page.keyboard.press("ControlOrMeta+A");
  await page.keyboard.press("Delete");
  await expect.poll(() => box.inputValue()).toBe("");
  await page.keyboard.press("ControlOrMeta+V");
  await expect.poll(() => box.inputValue()).toBe(text);
}

/** A sheet as it stands in the grid. */
async function sheetInGrid(name: string): Promise<SheetPlan> {
  const { sheets } = await open.page.evaluate(() => globalThis.workbench.plan());
  return sheets.find((sheet) => sheet.name === name)!;
}

/** What a sheet of the grid shows, row by row: answers in the place of formulas. */
function shown({ blocks }: SheetPlan) {
  return blocks[0]!.cells.map((line) =>
    line.map((cell) => (typeof cell === "object" && cell !== null ? cell.value : cell)),
  );
}

describe("the page by keyboard alone, and again on another day", { timeout: 90_000 }, () => {
  it("leads from a paste over a tick and a build's name to sheets, which a reload does not forget", async () => {
    const { page, complaints } = await openWorkbench(open.browser, open.address);
    await walkByKeyboard(page, "#pane");
    await expect
      .poll(() => page.locator(".make [role=status]").textContent(), { timeout: 60_000 })
      .toMatch(/^Added .*Comparison.*Shots/);
    const { sheets } = await page.evaluate(() => globalThis.workbench.plan());
    expect(JSON.stringify(sheets.find(({ name }) => name === "Shots"))).toContain("Blue");
    await page.locator("#units").selectOption("metric");
    // At once: what waits to be kept is kept as the page goes.
    await page.reload();
    await page.locator("#shots-text").waitFor();
    expect(await page.locator("#shots-text").inputValue()).toBe(DEMO_TEXT);
    expect(await page.locator("#units").inputValue()).toBe("metric");
    await expect.poll(() => page.locator("#shots .brief").textContent()).toMatch(/^23 of 24 counted/);
    await page.locator("#builds > summary").click();
    expect(await page.locator("#builds .card b").allTextContents()).toContain("Blue");
    expect(complaints).toEqual([]);
    await page.close();
  });
});

describe("the whole way in the page: paste, press, read", { timeout: 90_000 }, () => {
  let json: ComparisonJson;

  it("adds the sheets of a pasted table at the press of one button", async () => {
    await paste(open.page, DEMO_TEXT);
    await open.page.locator("#make-sheets").click();
    await expect
      .poll(() => open.page.locator(".make [role=status]").textContent(), { timeout: 60_000 })
      .toMatch(/^Added .*Comparison.*Shots/);
  });

  it("shows in the grid's Comparison the means, spreads and changes that --json prints, to nine digits", async () => {
    const comparison = await sheetInGrid("Comparison");
    const rows = shown(comparison);
    const headings = rows.findIndex((row) => row.includes("Mean"));
    const baseline = / \(baseline\)$/;
    const against = String(rows[headings - 1]!.find((cell) => baseline.test(String(cell)))).replace(
      baseline,
      "",
    );
    json = comparisonJson(sessionOf(answer(readShots(DEMO_TEXT)), { baseline: against }));
    expect(json.baseline).toBe(against);
    json.builds.forEach(({ name, metrics }, b) => {
      const first = rows[headings]!.flatMap((cell, c) => (cell === "Mean" ? [c] : []))[b]!;
      expect(String(rows[headings - 1]![first])).toContain(name);
      for (const { key, label } of METRICS) {
        if (!(key in metrics)) continue;
        const row = rows.slice(headings).find((one) => one[0] === label)!;
        const { mean, sd } = metrics[key]!;
        expect(Math.abs(Number(row[first]) / mean - 1)).toBeLessThanOrEqual(1e-9);
        expect(Math.abs(Number(row[first + 1]) / sd! - 1)).toBeLessThanOrEqual(1e-9);
        const change = json.comparisons.find((one) => one.build === name && one.metric === key);
        if (change) {
          const off = Math.abs(Number(row[first + 2]) - change.difference);
          expect(off).toBeLessThanOrEqual(1e-9 * Math.max(1e-3, Math.abs(change.difference)));
        }
      }
    });
  });

  it("works out every figure of --json by the formulas of the grid, limits as finely as the grid can", async () => {
    const figures = figuresOfWorkings(shown(await sheetInGrid("Workings")));
    const wanted = figuresOfJson(json);
    const without = (limits: boolean, all: typeof wanted) =>
      new Map([...all].filter(([place]) => /(low|high)$/.test(place) === limits));
    expect(wanted.size).toBeGreaterThan(300);
    expect(disagreements(without(false, figures), without(false, wanted), 1e-9)).toEqual([]);
    // The grid's own quantile of t is off by up to 1.4e-9, and limits near 0 by more of themselves.
    expect(disagreements(without(true, figures), without(true, wanted), 1e-6)).toEqual([]);
  });

  it("saves a file of the same sheets, values, formulas and formats", async () => {
    const saved = await contentsOfXlsx((await savedFile(open.page)).bytes);
    const plan = contentsOfPlan(await open.page.evaluate(() => globalThis.workbench.plan()));
    expect(withinEngine(saved)).toEqual(withinEngine(plan));
  });

  it("keeps text as text that looks like a formula", async () => {
    const taken = answer(await open.page.evaluate(() => globalThis.workbench.host.taken()));
    const plan = comparisonWorkbook(oddSession(), taken, "2026-11-25 10:00 UTC");
    answer(await open.page.evaluate((asked) => globalThis.workbench.host.write(asked), plan));
    const shots = await sheetInGrid("Shots 2");
    for (const text of ['=HYPERLINK("x")', "+1+1", "@x", "-2+3", '=1+1 "stiff"', "95* ?~ o'clock"]) {
      const { row, column } = findText(shots, text);
      expect(cellAt(shots, row, column)).toBe(text);
    }
    const { sheets, ...rest } = await open.page.evaluate(() => globalThis.workbench.plan());
    const ours = sheets.filter(({ name }) => plan.sheets.some((sheet) => sheet.name === name));
    expect(withinEngine(contentsOfPlan({ ...rest, sheets: ours }))).toEqual(
      withinEngine(contentsOfPlan(plan)),
    );
  });

  it("asks no other address for anything, and its console stays quiet", () => {
    expect(open.complaints).toEqual([]);
  });
});
