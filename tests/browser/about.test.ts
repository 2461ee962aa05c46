import { describe, expect, it } from "vitest";
import { FUNCTIONS } from "../../src/functions/catalogue.ts";
import { aroundPage } from "./around-page.ts";
import { axeFaults } from "./axe-faults.ts";
import { rawValue } from "./workbench-page.ts";

const PATIENCE = 120_000;

const open = aroundPage();

describe("a first visit to the page", { timeout: PATIENCE }, () => {
  it("says in three lines what this is, with the demo session ready to run", async () => {
    expect(await open.page.locator("#about p").count()).toBe(3);
    expect(await open.page.locator("#about p").first().isVisible()).toBe(true);
    expect(await open.page.locator("#make-sheets").isEnabled()).toBe(true);
  });

  it("puts each example into the selected cell, where it answers what the function's own example says", async () => {
    const buttons = await open.page.locator("#about li button").all();
    expect(buttons.length).toBeGreaterThanOrEqual(6);
    for (const [place, button] of buttons.entries()) {
      const cell = `A${1 + 8 * place}`;
      await open.page.evaluate((name) => {
        const { workbook } = globalThis.workbench;
        workbook.setActiveRange(workbook.getActiveSheet().getRange(name));
      }, cell);
      await button.click();
      const formula = (await button.locator("code").textContent())!;
      const { example, shape } = FUNCTIONS.find(({ id }) => formula.startsWith(`=CLUB.${id}(`))!;
      const first = Array.isArray(example.answer) ? example.answer[0]![0] : example.answer;
      const found = await rawValue(open.page, cell);
      // The examples stand to the digits they show; their sources are named beside them.
      if (typeof first === "number")
        expect(Number(found), formula).toBeCloseTo(first, shape === "one" ? 1 : 0);
      else expect(found, formula).toBe(first);
    }
  });

  it("is closed on the next visit where it was closed on this one", async () => {
    await open.page.locator("#about summary").click();
    const kept = () => open.page.evaluate(() => globalThis.workbench.host.recall("about-closed"));
    await expect.poll(kept).toBe("yes");
    await open.page.reload();
    await open.page.waitForFunction(() => globalThis.workbench !== undefined);
    expect(await open.page.locator("#about p").first().isVisible()).toBe(false);
  });

  it("leaves the grid and the pane room on a narrow screen", async () => {
    await open.page.setViewportSize({ width: 480, height: 800 });
    const heights = () =>
      open.page.evaluate(() =>
        ["#grid", "#pane"].map((id) => document.querySelector(id)!.getBoundingClientRect().height),
      );
    for (const height of await heights()) expect(height).toBeGreaterThan(150);
    await open.page.setViewportSize({ width: 1400, height: 850 });
  });

  it("finds nothing in a reader's way outside the grid itself", async () => {
    await open.page.locator("#about summary").click();
    for (const colorScheme of ["light", "dark"] as const) {
      await open.page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      expect(await axeFaults(open.page, { exclude: ["#grid"] })).toEqual([]);
    }
    expect(open.complaints).toEqual([]);
  });
});
