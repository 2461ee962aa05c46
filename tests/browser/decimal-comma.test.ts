import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import type { SheetPlan } from "../../src/sheets/plan.ts";
import { aroundBrowser } from "./around-page.ts";
import { openWorkbench } from "./workbench-page.ts";

const PATIENCE = 180_000;

const around = aroundBrowser();

/** The sheets as they stand in the grid. */
const sheetsOf = (page: Page) => page.evaluate(() => globalThis.workbench.plan().sheets);

/** What a sheet says in sentences: its texts of more than a few words. */
function sentencesOf(sheets: readonly SheetPlan[], name: string): string[] {
  const cells = sheets.find((sheet) => sheet.name === name)!.blocks.flatMap(({ cells }) => cells.flat());
  return cells.filter((cell): cell is string => typeof cell === "string" && cell.split(" ").length > 5);
}

it(
  "writes sheets with a decimal comma in their sentences, and club lengths in centimetres, where the place does",
  async () => {
    const { page, complaints } = await openWorkbench(around.browser, around.address, { locale: "de-DE" });
    await page.locator("#pane #units").selectOption("metric");
    await page.locator("#pane #make-sheets").click();
    const status = page.locator("#pane .make [role=status]");
    await expect.poll(() => status.textContent(), { timeout: 30_000 }).toMatch(/^Added/);
    const sheets = await sheetsOf(page);
    const said = [...sentencesOf(sheets, "Comparison"), ...sentencesOf(sheets, "Player")];
    // The demo's better build carries 164.1 yd on average: 164.1 x 0.9144 = 150.1 m.
    expect(said.join("\n")).toMatch(/\d,\d\u202f?\s?m\b/);
    expect(said.filter((sentence) => /\d\.\d/.test(sentence))).toEqual([]);
    // Figures stay numbers, which the spreadsheet writes as its own place does.
    const figures = sheets.find(({ name }) => name === "Shots")!.blocks.flatMap(({ cells }) => cells.flat());
    expect(figures.some((cell) => typeof cell === "number" && !Number.isInteger(cell))).toBe(true);

    await page.locator("#pane #bench > summary").click();
    await page.locator("#pane .set").waitFor();
    // The usual 7-iron is 37 in: 37 x 2.54 = 93.98 cm.
    expect(await page.locator("#pane .set").textContent()).toMatch(/Length, cm.*93,98/);
    await page.locator("#pane #make-build").click();
    await expect.poll(() => status.textContent(), { timeout: 30_000 }).toMatch(/Build/);
    const build = (await sheetsOf(page)).find(({ name }) => name === "Build")!;
    const cells = build.blocks.flatMap(({ cells }) => cells.flat());
    expect(cells).toContain("Length (cm)");
    expect(cells).toContain(93.98);
    expect(sentencesOf([build], "Build").filter((sentence) => /\d\.\d/.test(sentence))).toEqual([]);
    expect(complaints).toEqual([]);
  },
  PATIENCE,
);
