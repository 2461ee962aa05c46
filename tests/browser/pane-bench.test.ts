import { describe, expect, test } from "vitest";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";
import { aroundPane } from "./around-pane.ts";
import { openAll } from "./pane-page.ts";

const PATIENCE = 60_000;

const openPane = aroundPane();

/** The pane with the demo session in it and every part open. */
async function openDemo(look = {}) {
  const page = await openPane(look, { demo: true });
  await openAll(page);
  await page.locator("#set-text").waitFor();
  return page;
}

const said = (page: Awaited<ReturnType<typeof openDemo>>) =>
  page.locator(".make [role=status]").textContent();

describe("the way to the bench", { timeout: PATIENCE }, () => {
  test("starts from the verdict's build and writes its Build sheet", async () => {
    const page = await openDemo();
    expect(await page.locator("#bench-build").inputValue()).toBe("105 g mid-launch");
    await page.locator("#make-build").click();
    await expect.poll(() => said(page)).toBe("Added Build.");
    const title = await page.evaluate(
      () => globalThis.paneTest.host!.written[0]!.sheets[0]!.blocks[0]!.cells[0]![0],
    );
    expect(title).toBe("Build sheet: 105 g mid-launch");
  });

  test("is walked by keyboard alone, from the closed part to the written sheet", async () => {
    const page = await openPane({}, { demo: true });
    await page.locator("#bench .brief").waitFor();
    const at = () =>
      page.evaluate(() => {
        const { activeElement: here } = document;
        return here?.id || here?.parentElement?.id;
      });
    const tabTo = async (id: string) => {
      for (let presses = 0; (await at()) !== id && presses < 60; presses++) await page.keyboard.press("Tab");
      expect(await at()).toBe(id);
    };
    await tabTo("bench");
    await page.keyboard.press("Enter");
    await page.locator("#set-text").waitFor();
    await tabTo("bench-build");
    await page.keyboard.press("ArrowUp");
    expect(await page.locator("#bench-build").inputValue()).toBe("95 g high-launch");
    await tabTo("make-build");
    await page.keyboard.press("Enter");
    await expect.poll(() => said(page)).toBe("Added Build.");
    expect(await at()).toBe("make-build");
  });

  test("steps shaft weights through the set by as many grams as are asked for", async () => {
    const page = await openDemo();
    const step = page.getByLabel("Shaft weight, grams more a club shorter");
    expect(await step.inputValue()).toBe("0");
    await step.fill("3");
    await step.press("Tab");
    // By hand: 105 g at the 7i, 3 g a club: 99 at the 5i, 114 at the PW.
    await expect
      .poll(() => page.locator("table.set tbody tr td:nth-child(3)").allTextContents())
      .toEqual(["99.0", "102.0", "105.0", "108.0", "111.0", "114.0"]);
    expect(await page.locator("#set-text").inputValue()).toMatch(/^shafts; 105; 3; 7i$/m);
    await page.locator("#usual-set").click();
    await expect.poll(() => step.inputValue()).toBe("0");
  });

  test("follows another choice, and goes back to the usual set after a line was typed over", async () => {
    const page = await openDemo();
    await page.locator("#bench-build").selectOption("95 g high-launch");
    const usual = await page.locator("#set-text").inputValue();
    expect(usual).toMatch(/^shafts; 95; /m);
    await page.locator("#set-text").fill(usual.replace("D2", "D4"));
    await page.locator("#make-build").click();
    await expect.poll(() => said(page)).toBe("Added Build.");
    await page.locator("#usual-set").click();
    expect(await page.locator("#set-text").inputValue()).toBe(usual);
  });

  test("shows what is wrong beside its line, and lets nothing be written until it is put right", async () => {
    const page = await openDemo();
    const usual = await page.locator("#set-text").inputValue();
    await page.locator("#set-text").fill(usual.replace(/^6i; 37.5/m, "6i; long"));
    const lines = usual.split("\n").findIndex((line) => line.startsWith("6i")) + 1;
    await expect
      .poll(() => page.locator("#set-problem").textContent())
      .toMatch(new RegExp(`^Line ${lines}6i; long.*length is "long"`));
    expect(await page.locator("#make-build").isDisabled()).toBe(true);
    await page.locator("#undo").click();
    expect(await page.locator("#set-problem").count()).toBe(0);
  });

  test("is kept with the session", async () => {
    const page = await openDemo();
    await page.locator("#bench-build").selectOption("120 g low-launch");
    const texts = () => page.evaluate(() => Object.fromEntries(globalThis.paneTest.host!.texts));
    await expect.poll(async () => Object.values(await texts()).join()).toContain('120 g low-launch","set"');
    const again = await openPane({}, { kept: await texts() });
    await openAll(again);
    await expect.poll(() => again.locator("#bench-build").inputValue()).toBe("120 g low-launch");
  });
});

describe("before the first ball", { timeout: PATIENCE }, () => {
  test("a plan names the build of every ball, and goes onto a sheet", async () => {
    const page = await openPane();
    await openAll(page);
    await page.locator("#plan-builds").fill("A\nB\nC\nD");
    await expect.poll(() => page.locator(".rounds li").count()).toBe(6);
    const rounds = await page.locator(".rounds li").allTextContents();
    for (const round of rounds) expect(round.split(" \u203a ").sort()).toEqual(["A", "B", "C", "D"]);
    await page.locator("#write-plan").click();
    await expect.poll(() => said(page)).toBe("Added Test plan.");
  });

  test("a difference that matters decides how many shots it takes", async () => {
    const page = await openPane();
    await openAll(page);
    await page.locator("#plan-builds").fill("A\nB");
    await page.getByLabel("Enough to see a difference that matters").check();
    await page.getByLabel("Difference that matters, yd", { exact: true }).fill("1");
    await page.getByLabel("Difference that matters, yd", { exact: true }).press("Tab");
    await expect
      .poll(() => page.locator("#plan .problem").textContent())
      .toMatch(/That would take \d+ shots/);
    await page.getByLabel("Difference that matters, yd", { exact: true }).fill("10");
    await page.getByLabel("Difference that matters, yd", { exact: true }).press("Tab");
    await page.locator(".rounds").waitFor();
  });
});

describe("what a shop sets for itself", { timeout: PATIENCE }, () => {
  test("target windows move the verdict's figures and go back to the usual ones", async () => {
    const page = await openDemo();
    const chances = () => page.locator("[aria-labelledby^=chances] desc").textContent();
    const before = await chances();
    const from = page.getByLabel("From, rpm of Spin rate");
    const usual = await from.inputValue();
    await from.fill("6400");
    await from.press("Tab");
    await expect.poll(chances).not.toBe(before);
    await page.locator("#usual-windows").click();
    expect(await from.inputValue()).toBe(usual);
    await expect.poll(chances).toBe(before);
  });

  test("speeds are shown in kilometres an hour where that is chosen, and it is remembered", async () => {
    const page = await openDemo({ locale: "de-DE" });
    await page.locator("#units").selectOption("metric-kmh");
    // 84.83 mph (the average of the demo's six) x 1.609344 = 136.5 km/h.
    await expect
      .poll(() => page.locator(".figures tr", { hasText: "Club speed" }).textContent())
      .toMatch(/km\/h136,5/);
    const texts = () => page.evaluate(() => Object.fromEntries(globalThis.paneTest.host!.texts));
    await expect.poll(async () => Object.values(await texts()).join()).toContain("metric-kmh");
    const again = await openPane({}, { kept: await texts() });
    expect(await again.locator("#units").inputValue()).toBe("metric-kmh");
  });

  test("nothing scrolls sideways at 200 % zoom, when the window is half as wide", async () => {
    const page = await openDemo({ width: 160, height: 400 });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    expect(DEMO_TEXT).toBe(await page.locator("#shots-text").inputValue());
  });
});
