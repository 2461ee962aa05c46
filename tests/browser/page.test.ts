import { describe, expect, it } from "vitest";
import type { SheetPlan, WorkbookPlan } from "../../src/sheets/plan.ts";
import { contentsOfPlan } from "../contents-of-plan.ts";
import { contentsOfXlsx } from "../hosts/file/contents-of-xlsx.ts";
import { samplePlan } from "../sheets/sample-plan.ts";
import { aroundPage } from "./around-page.ts";
import { axeFaults } from "./axe-faults.ts";
import { savedFile } from "./page-file.ts";
import { withinEngine } from "./within-engine.ts";
import { clickCell, openWorkbench, typeInto } from "./workbench-page.ts";

/**
 * The sample plan without the formula that fills several cells, which has a page of its own: beside conditions by
 * formula the grid calculates such a one twice, and the second time notes on the console which of the conditions it
 * has done with.
 */
function plainPlan(): WorkbookPlan {
  const plan = samplePlan();
  const blocks = (sheet: SheetPlan) =>
    sheet.blocks.map((block) => ({
      ...block,
      cells: block.cells.map((line) =>
        line.map((value) => (typeof value === "object" && value?.spills ? null : value)),
      ),
    }));
  return { ...plan, sheets: plan.sheets.map((sheet) => ({ ...sheet, blocks: blocks(sheet) })) };
}

const open = aroundPage();

describe("the page with the open grid", { timeout: 30_000 }, () => {
  it("answers a function of ours that is typed into a cell", async () => {
    // By hand: 430 / 28.349523125 oz * (29.1 - 14) in = 229.03 in-oz; (229.03 - 213.5) / 1.75 = 8.88 points over D0.
    expect(await typeInto(open.page, "A1", "=CLUB.SWINGWEIGHT(430,29.1)")).toBe("D8.9");
  });

  it("says above the grid why a cell shows an error", async () => {
    expect(await typeInto(open.page, "A3", '=CLUB.SWINGWEIGHT("heavy",29.1)')).toBe("#VALUE!");
    await open.page.keyboard.press("ArrowUp");
    const why = open.page.locator("#why");
    await expect.poll(() => why.textContent()).toMatch(/weight is "heavy"/);
    // All of it is there to be read, on a narrow screen too.
    for (const width of [1400, 700, 400]) {
      await open.page.setViewportSize({ width, height: 850 });
      const cut = await why.evaluate((line) => [
        line.scrollWidth - line.clientWidth,
        line.scrollHeight - line.clientHeight,
      ]);
      expect(cut, `${width} pixels wide`).toEqual([0, 0]);
    }
    await open.page.setViewportSize({ width: 1400, height: 850 });
  });

  it("keeps grid and pane in sight below a sentence of thousands of letters, which scrolls", async () => {
    await typeInto(open.page, "A5", '=CLUB.SWINGWEIGHT.MOMENT(REPT("heavy ",1000))');
    await open.page.keyboard.press("ArrowUp");
    const why = open.page.locator("#why");
    await expect.poll(async () => (await why.textContent())?.length).toBeGreaterThan(6000);
    const heights = await open.page.evaluate(() =>
      [".bar", "#grid", "#pane"].map((one) => document.querySelector(one)!.getBoundingClientRect().height),
    );
    expect(heights[0]).toBeLessThan(150);
    for (const height of heights.slice(1)) expect(height).toBeGreaterThan(400);
    expect(await why.evaluate((line) => line.scrollHeight > line.clientHeight)).toBe(true);
    expect(await axeFaults(open.page, ".bar")).toEqual([]);
  });

  it("spills an answer that is several cells", async () => {
    await typeInto(open.page, "C1", "430");
    await typeInto(open.page, "C2", "440");
    await typeInto(open.page, "D1", "=CLUB.SWINGWEIGHT(C1:C2,29.1)");
    const cells = await open.page.evaluate(() => globalThis.workbench.plan().sheets[0]!.blocks[0]!.cells);
    expect(cells[0]![3]).toBe("D8.9");
    expect(cells[1]![3]).toMatch(/^E\d\.\d$/);
  });

  it("carries a plan out so that reading the grid back gives the plan", async () => {
    const plan = plainPlan();
    const written = await open.page.evaluate((asked) => globalThis.workbench.host.write(asked), plan);
    const inSight = plan.sheets.filter(({ hidden }) => !hidden);
    expect(inSight.length).toBeLessThan(plan.sheets.length);
    expect(written).toMatchObject({ sheets: inSight.map(({ name }) => name) });
    const { sheets, ...rest } = await open.page.evaluate(() => globalThis.workbench.plan());
    const ours = sheets.filter(({ name }) => plan.sheets.some((sheet) => sheet.name === name));
    expect(withinEngine(contentsOfPlan({ ...rest, sheets: ours }))).toEqual(
      withinEngine(contentsOfPlan(plan)),
    );
  });

  it("carries a formula out that fills several cells, and gives it back with its answers", async () => {
    const fresh = await openWorkbench(open.browser, open.address);
    const plan = samplePlan();
    const written = await fresh.page.evaluate((asked) => globalThis.workbench.host.write(asked), plan);
    expect(written).toMatchObject({ notes: expect.any(Array) });
    const { sheets, ...rest } = await fresh.page.evaluate(() => globalThis.workbench.plan());
    const ours = sheets.filter(({ name }) => plan.sheets.some((sheet) => sheet.name === name));
    const [read, planned] = [contentsOfPlan({ ...rest, sheets: ours }), contentsOfPlan(plan)];
    expect(read.sheets[0]!.cells.B13).toMatchObject({ spills: "B13:F13" });
    expect(withinEngine(read)).toEqual(withinEngine(planned));
    const { bytes } = await savedFile(fresh.page);
    const saved = (await contentsOfXlsx(bytes)).sheets.filter(({ name }) => name === plan.sheets[0]!.name);
    expect(withinEngine(saved[0]!.cells)).toEqual(withinEngine(read.sheets[0]!.cells));
    // The answers follow what the formula reads, in cells that nobody wrote to.
    await fresh.page.evaluate(async () => {
      const { grid, workbook } = globalThis.workbench;
      workbook.getSheetByName("Shots & more")!.getRange("D3").setValue(9.5);
      await grid.getFormula().onCalculationResultApplied();
    });
    const answer = () =>
      fresh.page.evaluate(() => {
        const value = globalThis.workbench.plan().sheets.find(({ name }) => name.startsWith("Player"))!;
        const cell = value.blocks[0]!.cells[12]![1];
        return typeof cell === "object" ? cell?.spills?.[0] : cell;
      });
    await expect.poll(answer).toEqual([-3.2, 9.5, 4.4, -11.6, 0.7]);
    await fresh.page.close();
  });

  it("calculates again when a tick is clicked away, draws the chart again, and takes the tick back", async () => {
    await clickCell(open.page, "Shots & more", "A2");
    await expect.poll(keptOfFirst).toBe(4);
    await expect.poll(() => figureIn("Shots & more", "A2")).toBe(false);
    const picture = await pictureOn("Player's comparison");
    await clickCell(open.page, "Shots & more", "A2");
    await expect.poll(keptOfFirst).toBe(5);
    await expect.poll(() => figureIn("Shots & more", "A2")).toBe(true);
    expect(picture).toContain("data:image/svg+xml");
  });

  it("draws a chart again when a figure in it changes", async () => {
    const before = await pictureOn("Player's comparison");
    await open.page.evaluate(() =>
      globalThis.workbench.workbook.getSheetByName("Shots & more")!.getRange("C2").setValue(258),
    );
    await expect.poll(() => pictureOn("Player's comparison")).not.toBe(before);
  });

  it("takes its sheets away again when a write is stopped", async () => {
    const outcome = await open.page.evaluate(async (asked) => {
      const stop = new AbortController();
      const renamed = {
        ...asked,
        names: [],
        active: "Two",
        sheets: asked.sheets.slice(1).map((sheet, i) => ({
          ...sheet,
          name: ["One", "Two"][i]!,
          tables: [],
        })),
      };
      const answer = await globalThis.workbench.host.write(renamed, {
        signal: stop.signal,
        progress: (share) => share > 0.3 && stop.abort(),
      });
      return { answer, taken: await globalThis.workbench.host.taken() };
    }, plainPlan());
    expect(outcome.answer).toMatchObject({ kind: "unavailable" });
    expect(outcome.taken).toMatchObject({ sheets: expect.not.arrayContaining(["One"]) });
  });

  it("refuses a plan whose names are taken, and writes nothing", async () => {
    const outcome = await open.page.evaluate((asked) => globalThis.workbench.host.write(asked), plainPlan());
    expect(outcome).toMatchObject({ kind: "invalid" });
  });

  it("hands the selected cells over as tab-separated text", async () => {
    const text = await open.page.evaluate(() => {
      const { workbook, host } = globalThis.workbench;
      const sheet = workbook.getSheetByName("Shots & more")!.activate();
      workbook.setActiveRange(sheet.getRange("A1:C2"));
      return host.selection();
    });
    expect(text).toBe("Keep\tBuild\tCarry (yd)\nTRUE\tA 65 g\t258");
  });

  it("tells a followed table anew when a cell of it changes, and nothing once it was let go", async () => {
    const told = await open.page.evaluate(async () => {
      const { workbook, host } = globalThis.workbench;
      const heard: unknown[] = [];
      const pause = () => new Promise((resolve) => setTimeout(resolve, 600));
      const stop = await host.follow!("Shots_1", (text) => heard.push(text));
      if (typeof stop !== "function") return ["not followed"];
      const cell = workbook.getSheetByName("Shots & more")!.getRange("C3");
      cell.setValue(249.5);
      await pause();
      await stop();
      cell.setValue(248.9);
      await pause();
      return heard;
    });
    expect(told.length).toBeGreaterThan(0);
    for (const text of told) expect(text).toMatch(/^Keep\tBuild\tCarry[\s\S]*\t249\.5\t/);
  });

  it("goes on following a table that is renamed, and tells as the last thing that it is gone", async () => {
    const told = await open.page.evaluate(async () => {
      const { workbook, host } = globalThis.workbench;
      const heard: unknown[] = [];
      const pause = () => new Promise((resolve) => setTimeout(resolve, 600));
      const front = workbook.getActiveSheet();
      const sheet = workbook.create("Followed", 20, 5);
      sheet.getRange("A1:B2").setValues([
        ["Build", "Carry"],
        ["A", 150],
      ]);
      await sheet.addTable("Monday", sheet.getRange("A1:B2").getRange(), "followed", { showHeader: true });
      const stop = await host.follow!("Monday", (text) => heard.push(text));
      await pause();
      heard.push(await sheet.setTableName("followed", "Tuesday"));
      sheet.getRange("B2").setValue(151);
      await pause();
      await sheet.removeTable("followed");
      await pause();
      sheet.getRange("B2").setValue(152);
      await pause();
      if (typeof stop === "function") await stop();
      workbook.deleteSheet(sheet);
      workbook.setActiveSheet(front);
      return heard;
    });
    const text = "Build\tCarry\nA\t150";
    expect(told).toEqual([
      text,
      true,
      text.replace("150", "151"),
      { kind: "unavailable", message: 'There is no table "Monday" any more; choose another.' },
    ]);
  });

  it("shows the grid on sheets that hold a table, and on no other that was made", async () => {
    const shown = await open.page.evaluate(() =>
      globalThis.workbench.workbook
        .getSheets()
        .map((sheet) => [sheet.getSheetName(), !sheet.hasHiddenGridLines()]),
    );
    expect(Object.fromEntries(shown)).toMatchObject({ "Player's comparison": false, "Shots & more": true });
  });

  it("saves a file that holds what the grid holds, charts as charts", async () => {
    const { name, bytes } = await savedFile(open.page);
    expect(name).toBe("bay-and-bench.xlsx");
    const saved = await contentsOfXlsx(bytes);
    const shown = contentsOfPlan(await open.page.evaluate(() => globalThis.workbench.plan()));
    expect(withinEngine(saved)).toEqual(withinEngine(shown));
  });

  it("says how a save went in a line of its own, and why one failed, while the button keeps its name", async () => {
    const line = open.page.locator("#saving");
    expect(await line.textContent()).toBe("Saved bay-and-bench.xlsx.");
    const { page } = await openWorkbench(open.browser, open.address);
    // More letters than a cell of a file holds (32,767 by the format's specification).
    await page.evaluate(() => {
      globalThis.workbench.workbook.getActiveSheet().getRange("A1").setValue("x".repeat(33_000));
    });
    await page.locator("#save").click();
    await expect.poll(() => page.locator("#saving").textContent()).toMatch(/^Not saved: /);
    expect(await page.locator("#save").textContent()).toBe("Save as .xlsx");
    expect(await page.locator("#save").getAttribute("aria-disabled")).toBeNull();
    await page.close();
  });

  it("can be stopped while it saves, keeps the keyboard's place, and saves when asked again", async () => {
    const { page } = await openWorkbench(open.browser, open.address);
    // As long as its script is on its way, nothing is written.
    await page.route("**/xlsx-worker.js", () => {});
    await page.locator("#save").click();
    await page.locator("#stop-saving").click();
    const line = page.locator("#saving");
    await expect.poll(() => line.textContent()).toBe("Stopped; nothing was saved.");
    expect(await page.locator("#stop-saving").isVisible()).toBe(false);
    expect(await page.locator("#save").evaluate((button) => button === document.activeElement)).toBe(true);
    await page.unroute("**/xlsx-worker.js");
    await savedFile(page);
    await expect.poll(() => line.textContent()).toBe("Saved bay-and-bench.xlsx.");
    await page.route("**/xlsx-worker.js", (route) => route.abort());
    await page.locator("#save").click();
    await expect
      .poll(() => line.textContent())
      .toMatch(/^Not saved: It could not be written beside the page/);
    await page.close();
  });

  it("keeps nobody out with forced colours", async () => {
    const page = await open.browser.newPage({ forcedColors: "active", locale: "en-GB" });
    await page.goto(open.address);
    await page.locator("#hit-next").waitFor();
    // What the grid draws for itself is its maker's; the rest is ours.
    for (const part of [".bar", "#about", "#pane"]) expect(await axeFaults(page, part), part).toEqual([]);
    await page.close();
  });

  it("leaves its own address never, and its console quiet", () => {
    expect(open.complaints).toEqual([]);
  });

  const keptOfFirst = () => figureIn("Player's comparison", "B6");

  async function figureIn(sheet: string, cell: string): Promise<unknown> {
    const plan = await open.page.evaluate(() => globalThis.workbench.plan());
    const found = contentsOfPlan(plan).sheets.find(({ name }) => name === sheet);
    return found?.cells[cell]?.value;
  }

  async function pictureOn(sheet: string): Promise<string | undefined> {
    return open.page.evaluate(
      (name) => globalThis.workbench.workbook.getSheetByName(name)!.getImages()[0]?.toBuilder().getSource(),
      sheet,
    );
  }
});
