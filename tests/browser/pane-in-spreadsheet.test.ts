import { rm } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";
import { FUNCTIONS } from "../../src/functions/catalogue.ts";
import { argumentsOf } from "../../src/functions/define-function.ts";
import { DEVELOPMENT_ADDRESS } from "../../src/hosts/excel/manifest-for.ts";
import { expectAnswer } from "../functions/expect-answer.ts";
import { manifestFaults } from "../manifest/manifest-faults.ts";
import { newService, type Service } from "../office-host/service.ts";
import { axeFaults } from "./axe-faults.ts";
import { type BuiltFile, buildAddin, builtFiles } from "./build-addin.ts";
import { walkByKeyboard } from "./keyboard-walk.ts";
import { pasteMany } from "./long-table.ts";
import { openBrowser } from "./open-browser.ts";
import { openPaneInSpreadsheet, type SpreadsheetLook } from "./pane-in-spreadsheet.ts";
import { openAll } from "./pane-page.ts";

const PATIENCE = 120_000;

let browser: Browser;
let folder: string;
let files: Map<string, BuiltFile>;
beforeAll(async () => {
  folder = await buildAddin();
  files = await builtFiles(folder);
  browser = await openBrowser();
}, PATIENCE);
afterAll(async () => {
  await browser?.close();
  if (folder) await rm(folder, { recursive: true });
});

const open = (service: Service, look: SpreadsheetLook = {}) =>
  openPaneInSpreadsheet(browser, service, files, undefined, look);
const sheetNames = (service: Service) => service.workbook.sheets.map(({ bag }) => bag.Name);

describe("the built add-in in the spreadsheet, under its own strict policy", { timeout: PATIENCE }, () => {
  test("goes from a pasted table to sheets through the true client library", async () => {
    const service = newService();
    const { page, complaints, strange, scripts } = await open(service);
    await page.locator("#shots-text").fill(DEMO_TEXT);
    await page.locator("#make-sheets").click();
    await expect
      .poll(() => page.locator(".make [role=status]").textContent(), { timeout: 20_000 })
      .toMatch(/^Added Comparison/);
    expect(sheetNames(service).slice(0, 2)).toEqual(["Sheet1", "Comparison"]);
    expect(sheetNames(service)).toContain("Shots");
    expect(scripts.slice(0, 3).map((address) => address.split("/").at(-1))).toEqual([
      "office.js",
      "functions.js",
      "pane.js",
    ]);
    expect(complaints).toEqual([]);
    expect(strange).toEqual([]);
  });

  test("answers every function's worked example, and a wrong argument with the platform's own error", async () => {
    const { page, complaints, strange } = await open(newService());
    for (const spec of FUNCTIONS) {
      // The spreadsheet hands over a grid for each argument, null for what is left out, and a last word of its own.
      const given = argumentsOf(spec).map((_, i) => gridOf(spec.example.call[i]));
      expectAnswer(await callInPage(page, spec.id, given), spec.example.answer);
    }
    expect(await callInPage(page, "SWINGWEIGHT", [[["heavy"]], [[29]], null])).toEqual({
      code: "#VALUE!",
      message: expect.stringContaining("weight"),
    });
    expect(complaints).toEqual([]);
    expect(strange).toEqual([]);
  });

  test("takes the selected cells", async () => {
    const service = newService();
    const { page, complaints } = await open(service);
    await fillSheet(page, service);
    await page.getByRole("button", { name: "Take the selected cells" }).click();
    await expect.poll(() => page.locator("#shots-text").inputValue()).toBe(DEMO_TEXT);
    expect(complaints).toEqual([]);
  });

  test("takes a table of the workbook, and reads a shop's own columns once they were explained", async () => {
    const service = newService();
    const { page, complaints } = await open(service);
    await page.evaluate(() =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getActiveWorksheet();
        sheet.getRange("B2:C4").formulas = [
          ["Schaft", "Weite"],
          ["'leicht", 140],
          ["'schwer", 150],
        ];
        sheet.tables.add("B2:C4", true).name = "Fittings";
        await context.sync();
      }),
    );
    await takeTable(page);
    await page.getByLabel("What Schaft holds").first().selectOption("build");
    await page.getByLabel("What Weite holds").first().selectOption("carry");
    await expect.poll(() => page.locator("#make-sheets").isEnabled()).toBe(true);
    await expect.poll(() => service.workbook.settings.size).toBeGreaterThan(1);
    // Another table with the same headings, in the same workbook on another day.
    const later = await open(newService(service.workbook));
    await later.page.locator("#shots-text").fill("");
    await later.page.locator("#shots-text").fill("SCHAFT\tWEITE\nleicht\t141\nschwer\t152\nschwer\t153");
    await expect.poll(() => later.page.locator("#make-sheets").isEnabled()).toBe(true);
    expect(complaints).toEqual([]);
  });

  test("follows a table while the player hits, keeps what was unticked, and stops when it is told to", async () => {
    const service = newService();
    const { page, complaints, strange } = await open(service);
    const rows: (string | number)[][] = [
      ["'Build", "'Carry (yd)", "'Offline (yd)"],
      ["'A", 150, -3],
      ["'A", 153, 2],
      ["'B", 161, 4],
      ["'B", 158, 1],
    ];
    await fillTable(page, rows);
    await takeTable(page, { follow: true });
    await expect.poll(() => page.locator(".follow").textContent()).toContain("Following “Fittings”");
    const shots = page.locator("#shots");
    await shots.locator("summary").click();
    const ticks = shots.getByRole("checkbox");
    await expect.poll(() => ticks.count()).toBe(4);
    await ticks.nth(1).uncheck();
    // The section may be closed meanwhile; the table is followed all the same.
    await page.locator("#bring summary").click();
    await fillTable(page, [...rows, ["'B", 163, 0]]);
    await expect.poll(() => ticks.count()).toBe(5);
    const ticked = () => ticks.evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).checked));
    expect(await ticked()).toEqual([true, false, true, true, true]);
    await page.locator("#stop-following").click();
    await expect.poll(() => service.workbook.watched.size).toBe(0);
    await fillTable(page, [...rows, ["'B", 163, 0], ["'A", 151, 0]]);
    await page.waitForTimeout(300);
    expect(await ticks.count()).toBe(5);
    expect(complaints).toEqual([]);
    expect(strange).toEqual([]);
  });

  test("names lines that both changed, has the table's when told to, and ends with another session or text", async () => {
    const service = newService();
    const { page, complaints } = await open(service);
    const rows: (string | number)[][] = [
      ["'Build", "'Carry (yd)"],
      ["'A", 150],
      ["'B", 161],
    ];
    await fillTable(page, rows);
    await takeTable(page, { follow: true });
    const text = page.locator("#shots-text");
    const following = page.locator(".follow");
    await expect.poll(() => following.textContent()).toContain("Following “Fittings”");
    await text.fill("Build\tCarry (yd)\nA\t150\nB\t163");
    await fillTable(page, [rows[0]!, rows[1]!, ["'B", 162], ["'A", 151]]);
    await expect
      .poll(() => page.locator("#kept-lines").textContent())
      .toBe("1 line was changed here and in the table; yours stay: row 3 (the table now has B 162).");
    expect(await text.inputValue()).toBe("Build\tCarry (yd)\nA\t150\nB\t163\nA\t151");
    await page.locator("#take-theirs").click();
    await expect.poll(() => text.inputValue()).toBe("Build\tCarry (yd)\nA\t150\nB\t162\nA\t151");
    expect(await page.locator("#kept-lines").textContent()).toBe("");
    await page.locator("#new-session").click();
    await expect.poll(() => service.workbook.watched.size).toBe(0);
    await page.locator("#session").selectOption({ index: 0 });
    await expect.poll(() => text.inputValue()).toContain("162");
    await page.waitForTimeout(200);
    expect(await following.count()).toBe(0);
    await takeTable(page, { follow: true });
    await expect.poll(() => service.workbook.watched.size).toBe(1);
    await page.locator("#start-over").click();
    await expect.poll(() => following.textContent()).toContain("not hold “Fittings” any more");
    expect(service.workbook.watched.size).toBe(0);
    await fillTable(page, [...rows, ["'C", 170]]);
    await page.waitForTimeout(300);
    expect(await text.inputValue()).toBe("");
    expect(complaints).toEqual([]);
  });

  test("compares the selection and fills a bench sheet from the ribbon", async () => {
    const service = newService();
    const { page, complaints, strange } = await open(service);
    await fillSheet(page, service);
    await press(page, "compareSelection");
    await expect.poll(() => page.locator("#said").textContent()).toMatch(/^Added Comparison/);
    await expect.poll(() => page.locator("#shots-text").inputValue()).toBe(DEMO_TEXT);
    await press(page, "fillBenchSheet");
    await expect.poll(() => page.locator("#said").textContent()).toMatch(/^Added Build.* It is for "/);
    expect(sheetNames(service)).toContain("Build");
    expect(complaints).toEqual([]);
    expect(strange).toEqual([]);
  });

  test("is walked by keyboard alone from a paste over a tick and a build's name to sheets", async () => {
    const service = newService();
    const { page, complaints } = await open(service);
    await walkByKeyboard(page, "#pane");
    await expect
      .poll(() => page.locator(".make [role=status]").textContent(), { timeout: 20_000 })
      .toMatch(/^Added Comparison/);
    const shots = service.workbook.sheets.find(({ bag }) => bag.Name === "Shots");
    expect(JSON.stringify([...shots!.cells.values()])).toContain("Blue");
    expect(complaints).toEqual([]);
  });

  test("keeps nobody out: no fault in its page, light, dark and with forced colours", async () => {
    for (const look of [{}, { background: "#262626" }, { forced: true }]) {
      const { page } = await open(newService(), look);
      await page.locator("#shots-text").fill(DEMO_TEXT);
      await page.locator("#hit-next").waitFor();
      await openAll(page);
      await page.locator("#set-text").waitFor();
      await page.locator("#keep-in-ledger").waitFor();
      await press(page, "fillBenchSheet");
      await expect.poll(() => page.locator("#said").textContent()).not.toBe("");
      expect(await axeFaults(page), JSON.stringify(look)).toEqual([]);
      await page.close();
    }
  });

  test("takes the spreadsheet's own theme, and moves nothing where nothing is to move", async () => {
    for (const [background, theme] of [
      ["#262626", "dark"],
      ["#ffffff", "light"],
    ] as const) {
      const { page } = await open(newService(), { background, still: true });
      for (const part of ["#pane", "#said"])
        expect(await page.locator(part).getAttribute("data-theme")).toBe(theme);
      const moves = await page
        .locator("#make-sheets")
        .evaluate((button) => getComputedStyle(button).transitionDuration);
      expect(moves).toBe("0s");
      await page.close();
    }
  });

  test("fetches the rest of itself once it is idle, so that the network may go", async () => {
    const { page, complaints } = await open(newService());
    await page.waitForLoadState("networkidle");
    await page.context().setOffline(true);
    await page.route("**/*", (route) => route.abort());
    await page.locator("#shots-text").fill(DEMO_TEXT);
    await openAll(page);
    await page.locator("#set-text").waitFor();
    await page.locator("#further p").first().waitFor();
    await page.locator("#make-sheets").click();
    await expect
      .poll(() => page.locator(".make [role=status]").textContent(), { timeout: 20_000 })
      .toMatch(/^Added Comparison/);
    expect(await page.locator("#unfetched").count()).toBe(0);
    expect(complaints).toEqual([]);
    await pasteMany(page, 8000);
    await page.locator("#long-table .headline").waitFor({ timeout: 60_000 });
  });

  test("says that a part of it cannot be fetched, and shows it once it can", async () => {
    const lacking = new Map(files);
    const name = [...files.keys()].find((path) => /^workshop.*\.js$/.test(path))!;
    lacking.delete(name);
    const { page } = await openPaneInSpreadsheet(browser, newService(), lacking);
    await page.locator("#plan summary").click();
    await expect.poll(() => page.locator("#unfetched").textContent()).toContain("could not be fetched");
    lacking.set(name, files.get(name)!);
    await page.locator("#unfetched button").click();
    await page.locator("#plan-builds").waitFor();
    expect(await page.locator("#unfetched").count()).toBe(0);
  });

  test("says what is wrong where the platform's own script does not come", async () => {
    const page = await browser.newPage();
    await page.route("**/*", (route) => {
      const file = files.get(
        route
          .request()
          .url()
          .slice(DEVELOPMENT_ADDRESS.length + 1),
      );
      return file ? route.fulfill(file) : route.abort();
    });
    await page.goto(`${DEVELOPMENT_ADDRESS}/pane.html`);
    await expect.poll(() => page.getByRole("alert").textContent()).toContain("office.js");
    await page.getByRole("button", { name: "Try again" }).waitFor();
    await page.close();
  });

  test("says after a while that it takes too long, where its own script does not come either", async () => {
    const page = await browser.newPage();
    await page.route("**/*", (route) => {
      const path = route
        .request()
        .url()
        .slice(DEVELOPMENT_ADDRESS.length + 1);
      const file = /\.js$/.test(path) ? undefined : files.get(path);
      return file ? route.fulfill(file) : route.abort();
    });
    await page.goto(`${DEVELOPMENT_ADDRESS}/pane.html`);
    const late = page.locator(".late");
    expect(await late.isVisible()).toBe(false);
    await late.evaluate((line) => {
      for (const animation of line.getAnimations()) animation.finish();
    });
    expect(await late.isVisible()).toBe(true);
    await page.close();
  });

  test("says in the pane what a button cannot do", async () => {
    const { page } = await open(newService());
    await press(page, "fillBenchSheet");
    expect(await page.locator("#said").textContent()).toMatch(/^There are no shots yet/);
    await press(page, "compareSelection");
    expect(await page.locator("#said").textContent()).toMatch(/^The selected cells are empty/);
  });
});

test("the add-in built for a shop's own address with a path runs from there, and asks for nothing elsewhere", {
  timeout: PATIENCE,
}, async () => {
  const address = "https://clubs.example/fitting";
  const own = await buildAddin(address);
  try {
    const built = await builtFiles(own);
    const manifest = built.get("manifest.xml")!.body.toString();
    expect(manifestFaults(manifest, address)).toEqual([]);
    // Everything that the manifest names is there to be served.
    const named = [...manifest.matchAll(/https:\/\/clubs\.example\/fitting\/([^"]+)"/g)].map(
      ([, path]) => path!,
    );
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((path) => !built.has(path))).toEqual([]);
    const { functions } = JSON.parse(built.get("functions.json")!.body.toString());
    for (const { helpUrl } of functions) {
      expect(helpUrl.startsWith(`${address}/`), helpUrl).toBe(true);
      expect(built.has(helpUrl.slice(address.length + 1).split("#")[0])).toBe(true);
    }
    const service = newService();
    const { page, complaints, strange } = await openPaneInSpreadsheet(browser, service, built, address);
    await page.locator("#shots-text").fill(DEMO_TEXT);
    await page.locator("#make-sheets").click();
    await expect.poll(() => sheetNames(service), { timeout: 20_000 }).toContain("Comparison");
    const { call, answer } = FUNCTIONS[0]!.example;
    const given = argumentsOf(FUNCTIONS[0]!).map((_, i) => gridOf(call[i]));
    expectAnswer(await callInPage(page, FUNCTIONS[0]!.id, given), answer);
    expect(complaints).toEqual([]);
    expect(strange).toEqual([]);
  } finally {
    await rm(own, { recursive: true });
  }
});

const gridOf = (given: unknown) =>
  given === undefined ? null : Array.isArray(given) ? (Array.isArray(given[0]) ? given : [given]) : [[given]];

/** Calls a function as the runtime does, by the name that functions.js registered it under. */
function callInPage(page: Page, id: string, given: unknown[]): Promise<unknown> {
  return page.evaluate(
    ([id, given]) => {
      const { mappings } = (CustomFunctions as unknown as Registry)._association;
      try {
        return mappings[id]!(...given, { functionName: id });
      } catch (error) {
        if (!(error instanceof CustomFunctions.Error)) throw error;
        return { code: error.code, message: error.message };
      }
    },
    [id, given] as const,
  );
}

/** Presses a button of the ribbon; resolves when the ribbon has its button back. */
function press(page: Page, command: string): Promise<void> {
  return page.evaluate(async (command) => {
    const { mappings } = (Office.actions as unknown as Registry)._association;
    await new Promise<void>((resolve, reject) => {
      Promise.resolve(mappings[command.toUpperCase()]!({ completed: resolve })).catch(reject);
    });
  }, command);
}

interface Registry {
  readonly _association: { readonly mappings: Record<string, (...given: unknown[]) => unknown> };
}

/** Rows from B2 on as the table "Fittings", which is there or is made. */
function fillTable(page: Page, rows: readonly (readonly (string | number)[])[]): Promise<void> {
  return page.evaluate(
    (entries) =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Sheet1");
        const range = sheet.getRangeByIndexes(1, 1, entries.length, entries[0]!.length);
        range.formulas = entries as never;
        const table = sheet.tables.getItemOrNullObject("Fittings");
        table.load("name");
        await context.sync();
        if (table.isNullObject) sheet.tables.add(range, true).name = "Fittings";
        else table.resize(range);
        await context.sync();
      }),
    rows,
  );
}

/** Takes the first table of the workbook in the pane. */
async function takeTable(page: Page, { follow = false } = {}): Promise<void> {
  await page.getByRole("button", { name: "Take a table of this workbook" }).click();
  await expect.poll(() => page.getByLabel("Table to take").inputValue()).toBe("Fittings");
  if (follow) await page.getByLabel("Follow it").check();
  await page.getByRole("button", { name: "Take it" }).click();
}

/** The demo table as text in B4 and below, with one of its cells selected. */
async function fillSheet(page: Page, service: Service): Promise<void> {
  const rows = DEMO_TEXT.split("\n").map((line) => line.split("\t").map((cell) => `'${cell}`));
  await page.evaluate(async (entries) => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.getRangeByIndexes(3, 1, entries.length, entries[0]!.length).formulas = entries;
      await context.sync();
    });
  }, rows);
  service.workbook.selection = [{ row: 5, column: 2, rows: 1, columns: 1 }];
}
