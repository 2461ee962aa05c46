import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { contentsOfPlan } from "../contents-of-plan.ts";
import { samplePlan } from "../sheets/sample-plan.ts";
import { openBrowser } from "./open-browser.ts";
import { type ServedPage, servePage } from "./serve-page.ts";
import { withinEngine } from "./within-engine.ts";
import { type OpenPage, openWorkbench, typeInto } from "./workbench-page.ts";

const PATIENCE = 120_000;

let served: ServedPage;
let browser: Browser;
let open: OpenPage;

beforeAll(async () => {
  [served, browser] = await Promise.all([servePage(), openBrowser()]);
  open = await openWorkbench(browser, served.address);
}, PATIENCE);

afterAll(async () => {
  await browser?.close();
  served?.close();
});

describe("the page with the open grid", { timeout: 30_000 }, () => {
  it("answers a function of ours that is typed into a cell", async () => {
    // By hand: 430 / 28.349523125 oz * (29.1 - 14) in = 229.03 in-oz; (229.03 - 213.5) / 1.75 = 8.88 points over D0.
    expect(await typeInto(open.page, "A1", "=CLUB.SWINGWEIGHT(430,29.1)")).toBe("D8.9");
  });

  it("says above the grid why a cell shows an error", async () => {
    expect(await typeInto(open.page, "A3", '=CLUB.SWINGWEIGHT("heavy",29.1)')).toBe("#VALUE!");
    await open.page.keyboard.press("ArrowUp");
    await expect.poll(() => open.page.locator("#why").textContent()).toMatch(/weight is "heavy"/);
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
    const plan = samplePlan();
    const written = await open.page.evaluate((asked) => globalThis.workbench.host.write(asked), plan);
    expect(written).toMatchObject({ sheets: plan.sheets.map(({ name }) => name) });
    const { sheets, ...rest } = await open.page.evaluate(() => globalThis.workbench.plan());
    const ours = sheets.filter(({ name }) => plan.sheets.some((sheet) => sheet.name === name));
    expect(withinEngine(contentsOfPlan({ ...rest, sheets: ours }))).toEqual(
      withinEngine(contentsOfPlan(plan)),
    );
  });

  it("calculates again when a tick is taken away, and draws the chart again", async () => {
    const before = await picture();
    const kept = await open.page.evaluate(async () => {
      const { grid, workbook } = globalThis.workbench;
      workbook.getSheetByName("Shots & more")!.getRange("A2").setValue({ v: 0, t: 3 });
      await grid.getFormula().onCalculationResultApplied();
      return workbook.getSheetByName("Player's comparison")!.getRange("B6").getRawValue();
    });
    expect(kept).toBe(4);
    await expect.poll(picture).not.toBe(before);
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
    }, samplePlan());
    expect(outcome.answer).toMatchObject({ kind: "unavailable" });
    expect(outcome.taken).toMatchObject({ sheets: expect.not.arrayContaining(["One"]) });
  });

  it("refuses a plan whose names are taken, and writes nothing", async () => {
    const outcome = await open.page.evaluate((asked) => globalThis.workbench.host.write(asked), samplePlan());
    expect(outcome).toMatchObject({ kind: "invalid" });
  });

  it("hands the selected cells over as tab-separated text", async () => {
    const text = await open.page.evaluate(() => {
      const { workbook, host } = globalThis.workbench;
      const sheet = workbook.getSheetByName("Shots & more")!.activate();
      workbook.setActiveRange(sheet.getRange("A1:C2"));
      return host.selection();
    });
    expect(text).toBe("Keep\tBuild\tCarry (yd)\nFALSE\tA 65 g\t251.2");
  });

  it("saves the workbook as a file", async () => {
    const [download] = await Promise.all([
      open.page.waitForEvent("download"),
      open.page.getByRole("button", { name: "Save as .xlsx" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("bay-and-bench.xlsx");
  });

  it("leaves its own address never, and its console quiet", () => {
    expect(open.complaints).toEqual([]);
  });

  async function picture(): Promise<string | undefined> {
    return open.page.evaluate(() => {
      const sheet = globalThis.workbench.workbook.getSheetByName("Player's comparison")!;
      return sheet.getImages()[0]?.toBuilder().getSource();
    });
  }
});
