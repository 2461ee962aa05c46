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

  it("keeps the console quiet", () => {
    expect(open.complaints).toEqual([]);
  });
});
