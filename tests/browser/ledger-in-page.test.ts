import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { contentsOfXlsx } from "../hosts/file/contents-of-xlsx.ts";
import { fillArchive, openLedger, pressInLedger, rowsInPage } from "./ledger-in-page.ts";
import { openBrowser } from "./open-browser.ts";
import { savedFile } from "./page-file.ts";
import { type ServedPage, servePage } from "./serve-page.ts";
import { type OpenPage, openWorkbench } from "./workbench-page.ts";

let served: ServedPage;
let browser: Browser;
let open: OpenPage;

beforeAll(async () => {
  [served, browser] = await Promise.all([servePage(), openBrowser()]);
  open = await openWorkbench(browser, served.address);
  await openLedger(open.page);
}, 180_000);

afterAll(async () => {
  await browser?.close();
  served?.close();
});

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

  it("keeps the console quiet", () => {
    expect(open.complaints).toEqual([]);
  });
});
