import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { contentsOfXlsx } from "../hosts/file/contents-of-xlsx.ts";
import { aroundPage } from "./around-page.ts";
import { fillArchive, openLedger, pressInLedger, rowsInPage } from "./ledger-in-page.ts";
import { savedFile } from "./page-file.ts";

const open = aroundPage();
beforeAll(async () => {
  await openLedger(open.page);
}, 180_000);

/** The 24 carries of the demo session, added up apart from this code, yards. */
const DEMO_CARRIES = 3825.5;

/** Formulas of somebody's own that look at the archive: at a column of its sheet, and at the table by its name. */
async function enter(): Promise<void> {
  await open.page.evaluate(async () => {
    const { workbook, host } = globalThis.workbench;
    const table = await host.tableCells("ShotArchive", []);
    if (!table || "message" in table) throw new Error("no archive");
    const sheet = workbook.getSheetByName("Sheet1")!;
    const column = String.fromCharCode(65 + table.headings.indexOf("Carry (yd)"));
    sheet.getRange("B40").setValue({ f: `=SUM('Shot archive'!${column}1:${column}9000)` });
    sheet.getRange("B41").setValue({ f: "=COUNTA(ShotArchive[Build])" });
  });
  await expect.poll(async () => (await answers()).count).toBeGreaterThan(0);
}

const answers = () =>
  open.page.evaluate(() => {
    const sheet = globalThis.workbench.workbook.getSheetByName("Sheet1")!;
    const [sum, count] = ["B40", "B41"].map((cell) => Number(sheet.getRange(cell).getRawValue()));
    return { sum: sum!, count: count! };
  });

/** Somebody's own sheet in front, all of it selected. */
const enterSheet = (page: Page, cells: readonly (readonly string[])[]) =>
  page.evaluate((given) => {
    const { workbook } = globalThis.workbench;
    const sheet = workbook.create("Track", 40, 12);
    workbook.setActiveSheet(sheet);
    const range = sheet.getRange(0, 0, given.length, given[0]!.length);
    range.setValues(given.map((row) => row.map((v) => ({ v, t: 1 }))));
    range.activate();
  }, cells as string[][]);

/** All that stands in the ledger's tables, as one text. */
const ledgerState = (page: Page) =>
  page.evaluate(async () => {
    const tables = ["Ledger", "ShotArchive"].map((name) => globalThis.workbench.host.tableCells(name));
    return JSON.stringify(await Promise.all(tables));
  });

/** The grid refuses the step of this number from now on, once; null: it takes all of them again. */
const failAt = (page: Page, step: number | null) =>
  page.evaluate((at) => {
    const { grid } = globalThis.workbench;
    // The grid's own is on its prototype, so that taking ours away brings it back.
    Reflect.deleteProperty(grid, "executeCommand");
    if (at === null) return;
    const real = grid.executeCommand.bind(grid);
    let taken = 0;
    grid.executeCommand = ((id: string, params?: object) =>
      taken++ === at ? Promise.resolve(false) : real(id, params)) as typeof grid.executeCommand;
  }, step);

const sheetCells = (page: Page) =>
  page.evaluate(() =>
    globalThis.workbench.workbook.getSheetByName("Track")!.getRange(0, 0, 20, 10).getValues(),
  );

describe("the ledger in the page", { timeout: 120_000 }, () => {
  it("keeps the session once, however often it is asked to", async () => {
    const first = await pressInLedger(open.page, "#keep-in-ledger");
    expect(first.said).toBe("4 builds and 24 shots added to the ledger.");
    const again = await pressInLedger(open.page, "#keep-in-ledger");
    expect(again.said).toBe("4 builds stood there already.");
    expect(await rowsInPage(open.page, "Ledger")).toBe(4);
    expect(await rowsInPage(open.page, "ShotArchive")).toBe(24);
  });

  it("is in the saved file as tables that a spreadsheet can filter and pivot", async () => {
    const { bytes } = await savedFile(open.page);
    const saved = await contentsOfXlsx(bytes);
    const tables = saved.sheets.flatMap((sheet) => sheet.tables.map(({ name }) => name));
    expect(tables).toEqual(expect.arrayContaining(["Ledger", "ShotArchive"]));
  });

  it("can be stopped in what takes long, has its tables as they were, and keeps the keyboard's place", async () => {
    await open.page.evaluate(() => {
      const { grid } = globalThis.workbench;
      const real = grid.executeCommand.bind(grid);
      grid.executeCommand = ((id: string, params?: object) =>
        new Promise((resolve) => setTimeout(resolve, 700)).then(() =>
          real(id, params),
        )) as typeof grid.executeCommand;
    });
    await open.page.locator("#forget-player").click();
    await open.page.locator("#stop-ledger").click();
    const said = open.page.locator("#ledger-said");
    await expect.poll(() => said.textContent(), { timeout: 20_000 }).toContain("Stopped");
    expect(await open.page.locator("#stop-ledger").count()).toBe(0);
    expect(await said.evaluate((line) => line === document.activeElement)).toBe(true);
    await open.page.evaluate(() => Reflect.deleteProperty(globalThis.workbench.grid, "executeCommand"));
    expect(await rowsInPage(open.page, "Ledger")).toBe(4);
    expect(await rowsInPage(open.page, "ShotArchive")).toBe(24);
  });

  it("can be stopped while it still reads what the shop's data say", async () => {
    await open.page.evaluate(() => {
      const { host } = globalThis.workbench;
      const real = host.tableCells;
      Object.assign(host, { tableCells: () => new Promise(() => {}), readAgain: real });
    });
    await open.page.locator("#shop-sheet").click();
    await open.page.locator("#stop-ledger").click();
    const said = open.page.locator("#ledger-said");
    await expect.poll(() => said.textContent()).toBe("Stopped; nothing was written.");
    await open.page.evaluate(() => {
      const { host } = globalThis.workbench;
      Object.assign(host, { tableCells: (host as unknown as { readAgain: unknown }).readAgain });
    });
    expect(await rowsInPage(open.page, "Ledger")).toBe(4);
  });

  it("says in a sentence that one session is too few to look back on", async () => {
    const { said } = await pressInLedger(open.page, "#look-back");
    expect(said).toContain("one session");
  });

  it("takes the player out again, and appends below a long archive", async () => {
    expect(await pressInLedger(open.page, "#forget-player")).toMatchObject({
      said: expect.stringContaining("4 rows and 24 shots"),
    });
    await fillArchive(open.page, 5_000);
    expect((await pressInLedger(open.page, "#keep-in-ledger")).said).toContain("24 shots added");
    expect(await rowsInPage(open.page, "ShotArchive")).toBeGreaterThanOrEqual(5_024);
  });

  it("lets formulas see the new rows, and takes one session back by one undo, which can be done again", async () => {
    await pressInLedger(open.page, "#forget-player");
    const rows = () => Promise.all(["Ledger", "ShotArchive"].map((name) => rowsInPage(open.page, name)));
    const before = await rows();
    await enter();
    const { sum, count } = await answers();
    const with24 = { sum: expect.closeTo(sum + DEMO_CARRIES, 6), count: count + 24 };
    await pressInLedger(open.page, "#keep-in-ledger");
    await expect.poll(answers).toEqual(with24);
    await open.page.evaluate(() => globalThis.workbench.grid.undo());
    await expect.poll(answers).toEqual({ sum: expect.closeTo(sum, 6), count });
    expect(await rows()).toEqual(before);
    await open.page.evaluate(() => globalThis.workbench.grid.redo());
    await expect.poll(answers).toEqual(with24);
    expect((await pressInLedger(open.page, "#keep-in-ledger")).said).toBe("4 builds stood there already.");
  });

  it("leaves no blank row in a table that was emptied, and shows days as days again", async () => {
    await pressInLedger(open.page, "#forget-player");
    expect(await rowsInPage(open.page, "Ledger")).toBe(1);
    expect((await pressInLedger(open.page, "#shop-sheet")).said).toContain("The ledger is empty");
    await pressInLedger(open.page, "#keep-in-ledger");
    expect(await rowsInPage(open.page, "Ledger")).toBe(4);
    const patterns = await open.page.evaluate(() => {
      const sheet = globalThis.workbench.workbook.getSheetByName("Ledger")!;
      return ["D2", "D3"].map((cell) => sheet.getRange(cell).getCellStyleData()?.n?.pattern);
    });
    expect(patterns).toEqual(["yyyy-mm-dd", "yyyy-mm-dd"]);
  });

  it("shows what a selected sheet becomes, takes corrections of the text it read, and keeps it", async () => {
    await enterSheet(open.page, [
      ["Date", "Player", "Shaft", "How far", "Spin"],
      ["03/04/2026", "Tess Marlow", "85 g", "137", "5600"],
      ["05/06/2026", "Tess Marlow", "95 g", "136", "5400"],
    ]);
    const before = await sheetCells(open.page);
    await open.page.locator("#read-tracking").click();
    const preview = open.page.getByRole("region", { name: "What the sheet becomes" });
    await preview.waitFor();
    expect(await preview.textContent()).toContain("03/04/2026");
    // The selection moves on, as it does when somebody looks at their sheet.
    await open.page.evaluate(() =>
      globalThis.workbench.workbook.getSheetByName("Track")!.getRange("H9").activate(),
    );
    await preview.getByRole("button", { name: "Day first" }).click();
    await expect.poll(() => preview.textContent()).toContain("2026-04-03");
    await preview.locator("summary").click();
    await preview.getByLabel("How far").selectOption("carryMean");
    await expect.poll(() => preview.textContent()).toContain("taken to be in yd");
    await preview.getByLabel("Figures without a unit are").selectOption("metric");
    await expect.poll(() => preview.locator("tbody td").allTextContents()).toContain("149.83");
    expect(await sheetCells(open.page)).toEqual(before);
    expect((await pressInLedger(open.page, "#keep-tracking")).said).toBe("2 builds added to the ledger.");
    expect(await preview.count()).toBe(0);
    expect(await sheetCells(open.page)).toEqual(before);
  });

  it("hands the ledger over as a file, and takes one back without doubling a row", async () => {
    const rows = await rowsInPage(open.page, "Ledger");
    await open.page.locator("#ledger-travel summary").click();
    const saving = open.page.waitForEvent("download");
    await open.page.locator("#export-ledger").click();
    const path = await (await saving).path();
    const text = readFileSync(path, "utf8");
    expect(text.trimEnd().split("\n")).toHaveLength(rows + 1);
    await open.page
      .locator("#ledger-file")
      .setInputFiles({ name: "ledger.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
    await open.page.locator("#keep-tracking").waitFor();
    expect((await pressInLedger(open.page, "#keep-tracking")).said).toBe(
      `${rows} builds stood there already.`,
    );
    expect(await rowsInPage(open.page, "Ledger")).toBe(rows);
  });

  it("has its tables as they were when any step of a change fails, and says so", async () => {
    await pressInLedger(open.page, "#forget-player");
    const before = await ledgerState(open.page);
    for (const button of ["#keep-in-ledger", "#forget-player"]) {
      const start = await ledgerState(open.page);
      let failed = 0;
      for (; failed < 30; failed++) {
        await failAt(open.page, failed);
        const { said } = await pressInLedger(open.page, button);
        await failAt(open.page, null);
        if (!said.includes("could not change the tables")) break;
        expect(await ledgerState(open.page), `${button}, step ${failed}`).toBe(start);
      }
      expect(failed, button).toBeGreaterThan(1);
      expect(failed, button).toBeLessThan(30);
      expect(await ledgerState(open.page)).not.toBe(start);
    }
    expect(await ledgerState(open.page)).toBe(before);
  });

  it("keeps the console quiet", () => {
    expect(open.complaints).toEqual([]);
  });
});
