import { rm } from "node:fs/promises";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { FORMULAS, SCRIPTS, SLY_NAMES, SLY_TEXT } from "../hostile/sly-session.ts";
import { newService } from "../office-host/service.ts";
import { planOfCells } from "../sheets/plan-of-cells.ts";
import { aroundBrowser } from "./around-page.ts";
import { buildAddin, builtFiles } from "./build-addin.ts";
import { openPaneInSpreadsheet } from "./pane-in-spreadsheet.ts";
import { tellForbidden } from "./tell-forbidden.ts";
import { openWorkbench } from "./workbench-page.ts";

const PATIENCE = 240_000;

let folder: string;
const around = aroundBrowser();
beforeAll(async () => {
  folder = await buildAddin();
}, PATIENCE);
afterAll(async () => {
  if (folder) await rm(folder, { recursive: true });
});

/** A name that runs says so on the console, which the openers of pages listen to. */
const listen = (page: Page) =>
  page.evaluate(() => {
    Object.assign(globalThis, { sly: () => console.error("a name ran as a script") });
  });

/** Elements that only a name could have brought in. */
const intruders = (page: Page) =>
  page.evaluate(() => {
    const wrong =
      "script:not([src]), iframe, object, embed, [onerror], [onload], [href^='javascript:'], img[src='x']";
    return [...document.querySelectorAll(wrong)].map(({ outerHTML }) => outerHTML.slice(0, 200));
  });

/** Pastes the sly table, opens every part of the pane and makes all sheets. */
async function makeEverything(page: Page): Promise<void> {
  await page.locator("#shots-text").fill(SLY_TEXT);
  for (const part of ["reading", "builds", "shots", "findings", "bench"]) {
    const section = page.locator(`#${part}`);
    await section.waitFor();
    if (!(await section.evaluate((element) => (element as HTMLDetailsElement).open))) {
      await section.locator("summary").first().click();
    }
  }
  await page.getByRole("textbox", { name: "Player", exact: true }).fill(SCRIPTS[0]);
  await page.getByRole("textbox", { name: "Place or shop", exact: true }).fill(SCRIPTS[1]);
  await page.locator("#findings .picture svg").first().waitFor();
  await page.locator("#make-sheets").click();
  await expect
    .poll(() => page.locator(".make [role=status]").textContent(), { timeout: 60_000 })
    .toMatch(/^Added/);
}

describe("names that would be scripts", { timeout: PATIENCE }, () => {
  test("are words in the pane in the spreadsheet, under the policy that is shipped", async () => {
    const service = newService();
    const { page, complaints, strange } = await openPaneInSpreadsheet(
      around.browser,
      service,
      await builtFiles(folder),
    );
    await listen(page);
    await makeEverything(page);
    const shown = await page.locator("#pane").textContent();
    for (const name of SLY_NAMES) expect(shown, name).toContain(name);
    expect(await intruders(page)).toEqual([]);
    expect(complaints).toEqual([]);
    expect(strange).toEqual([]);
    // The listener hears: what follows is what a name would do that got through.
    await page.evaluate(() => {
      document.body.insertAdjacentHTML("beforeend", '<img src=x onerror="sly()">');
      document.body.append(Object.assign(document.createElement("script"), { textContent: "sly()" }));
    });
    await expect.poll(() => complaints.join()).toContain("the policy forbade");
    expect(await intruders(page)).not.toEqual([]);
    expect(complaints.join()).not.toContain("a name ran");
  });

  test("are words in the page with the open grid, on its sheets, pictures and in what it says of a cell", async () => {
    const { page, complaints } = await openWorkbench(around.browser, around.address);
    await listen(page);
    await makeEverything(page);
    expect(await intruders(page)).toEqual([]);
    const pictures = await page.evaluate(() =>
      globalThis.workbench.workbook
        .getSheets()
        .flatMap((sheet) => sheet.getImages().map((image) => String(image.toBuilder().getSource())))
        .map((source) => atob(source.split(",")[1]!)),
    );
    expect(pictures.length).toBeGreaterThan(0);
    for (const picture of pictures) expect(picture).not.toMatch(/<(img|script)|onload="sly|onerror="sly/);
    const cells = await page.evaluate(() =>
      globalThis.workbench
        .plan()
        .sheets.flatMap(({ blocks }) => blocks.flatMap(({ cells }) => cells.flat()))
        .filter((cell) => cell !== null),
    );
    for (const name of SLY_NAMES) expect(cells, name).toContain(name);
    await page.evaluate(async (name) => {
      const { grid, workbook } = globalThis.workbench;
      const cell = workbook.getSheets()[0]!.activate().getRange("H3");
      cell.setValue({ f: `=CLUB.SWINGWEIGHT("${name.replaceAll('"', '""')}",29.1)` });
      await grid.getFormula().onCalculationResultApplied();
      workbook.setActiveRange(workbook.getSheets()[0]!.getRange("A1"));
      workbook.setActiveRange(cell);
    }, SCRIPTS[0]);
    await expect.poll(() => page.locator("#why").textContent()).toContain("<img src=x onerror=");
    expect(await intruders(page)).toEqual([]);
    expect(complaints).toEqual([]);
  });
});

test("texts that would be calculated stay texts in the open grid", { timeout: PATIENCE }, async () => {
  const { page, complaints } = await openWorkbench(around.browser, around.address);
  const plan = planOfCells(FORMULAS.map((text) => [text]));
  const written = await page.evaluate((asked) => globalThis.workbench.host.write(asked), plan);
  expect(written).toMatchObject({ sheets: ["Cells"] });
  const read = await page.evaluate(() =>
    globalThis.workbench
      .plan()
      .sheets.find(({ name }) => name === "Cells")!
      .blocks[0]!.cells.map((row) => row[0]),
  );
  expect(read).toEqual([...FORMULAS]);
  expect(complaints).toEqual([]);
});

test("the page of the functions loads nothing but itself under its own policy", {
  timeout: PATIENCE,
}, async () => {
  const page = await around.browser.newPage();
  const complaints: string[] = [];
  const asked: string[] = [];
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  page.on("request", (request) => asked.push(request.url()));
  await page.addInitScript(tellForbidden);
  await page.goto(`${around.address}functions.html`);
  await page.getByRole("heading", { level: 1 }).waitFor();
  const drawn = await page.locator("h1 img").evaluate((image) => (image as HTMLImageElement).naturalWidth);
  expect(drawn).toBe(64);
  expect(asked.filter((address) => !address.startsWith(around.address))).toEqual([]);
  expect(complaints).toEqual([]);
});
