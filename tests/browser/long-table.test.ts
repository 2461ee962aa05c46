import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { manyShots } from "../bench/many-shots.ts";
import { aroundBrowser } from "./around-page.ts";
import { axeFaults } from "./axe-faults.ts";
import { longestTask, pasteMany, watchTasks } from "./long-table.ts";
import { openAll, openPane } from "./pane-page.ts";
import { openWorkbench } from "./workbench-page.ts";

const PATIENCE = 180_000;
const SHOTS = 200_000;
/** Milliseconds of processor time: beyond it a person feels that the page does not answer. */
const MOST_HELD = 200;

const around = aroundBrowser();

const table = (page: Page) => page.locator("#long-table");
const said = (page: Page) => table(page).locator("[role=status]");

const open = (before?: () => void) => openWorkbench(around.browser, around.address, { before });

describe("a table of 200,000 shots in the pane, under the page's own policy", { timeout: PATIENCE }, () => {
  test("is read beside the page: told in steps, never holding it up, with an answer at the end", async () => {
    const { page, complaints } = await open();
    const before = await page.locator("#shots-text").inputValue();
    await watchTasks(around.browser, page);
    await pasteMany(page, SHOTS);
    await table(page).locator("progress").waitFor();
    const words = new Set<string>();
    while ((await table(page).locator("progress").count()) > 0)
      words.add((await said(page).textContent()) ?? "");
    expect([...words].filter((sentence) => /: \d+ %$/.test(sentence)).length).toBeGreaterThan(3);
    expect(await said(page).textContent()).toBe("The long table has been read.");
    expect(await longestTask(around.browser)).toBeLessThan(MOST_HELD);
    expect(await table(page).textContent()).toContain("200000 shots of 8 builds, 200000 counted");
    // The fourth build's carries were drawn around 168 yd with a spread of 5 (many-shots.ts).
    const carry = table(page)
      .locator(".figures tr", { hasText: /^Carry/ })
      .locator("td")
      .nth(3);
    expect(await carry.textContent()).toBe("168.0±5.0");
    // What was on the desk is still there.
    expect(await page.locator("#shots-text").inputValue()).toBe(before);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("is stopped at once when told to", async () => {
    const { page, complaints } = await open();
    await pasteMany(page, SHOTS);
    await table(page).locator("progress").waitFor();
    await expect.poll(() => page.workers().length).toBe(1);
    await page.locator("#stop-long").click();
    await expect.poll(() => page.workers().length, { timeout: 15_000 }).toBe(0);
    expect(await table(page).count()).toBe(0);
    await page.waitForTimeout(500);
    expect(await table(page).count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("gives a session of a part of it, with every build, and loses none that was there", async () => {
    const { page } = await open();
    await pasteMany(page, 10_000);
    await page.locator("#sample-long").click();
    await expect.poll(() => page.locator("#reading .brief").textContent()).toBe("2400 shots, 8 builds");
    // The demo was on the desk; its player did not hit these.
    const sessions = await page.locator("#session option").allTextContents();
    expect(sessions).toEqual([expect.stringContaining("(invented)"), expect.stringMatching(/^Session 2, /)]);
    await page.locator("#stop-long").click();
    expect(await table(page).count()).toBe(0);
    await page.close();
  });

  test("opened or dropped as a file is read without passing through the box", async () => {
    const text = manyShots(10_000);
    const ways: ((page: Page) => Promise<void>)[] = [
      (page) =>
        page
          .locator("#pane input[type=file]")
          .setInputFiles({ name: "shots.txt", mimeType: "text/plain", buffer: Buffer.from(text) }),
      (page) =>
        page.locator("#bring .drop").evaluate((section, letters) => {
          const dataTransfer = new DataTransfer();
          dataTransfer.items.add(new File([letters], "shots.txt"));
          section.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
        }, text),
    ];
    for (const bring of ways) {
      const { page } = await open();
      const before = await page.locator("#shots-text").inputValue();
      await bring(page);
      await expect
        .poll(() => table(page).textContent(), { timeout: 30_000 })
        .toContain("10000 shots of 8 builds");
      expect(await page.locator("#shots-text").inputValue()).toBe(before);
      await page.close();
    }
  });

  test("gives a session that has what was said of its builds and columns", async () => {
    const { page } = await open();
    await page.locator("#shots-text").fill("Build\tCarry (yd)\n70 g regular\t150\nB\t152");
    await page.locator("#builds > summary").click();
    const card = page.locator("#builds .card").filter({ hasText: "70 g regular" }).first();
    await card.locator("summary").click();
    await card.getByLabel("Name").fill("Blue");
    await card.getByLabel("Name").press("Tab");
    await pasteMany(page, 10_000);
    await table(page).locator(".headline").waitFor({ timeout: 60_000 });
    for (const forcedColors of ["none", "active"] as const) {
      await page.emulateMedia({ forcedColors });
      expect(await axeFaults(page, "#pane"), forcedColors).toEqual([]);
    }
    await page.locator("#sample-long").click();
    await expect.poll(() => page.locator("#reading .brief").textContent()).toMatch(/^2400 shots, 8 builds/);
    expect(await page.locator("#builds .card b").allTextContents()).toContain("Blue");
    await page.close();
  });

  test("is read in slices on the page where no worker can be had, with the same answer", async () => {
    const answers = [];
    for (const before of [undefined, () => Reflect.deleteProperty(globalThis, "Worker")]) {
      const { page, complaints } = await open(before);
      await pasteMany(page, 20_000);
      await table(page).locator(".headline").waitFor({ timeout: 60_000 });
      answers.push(await table(page).textContent());
      expect(complaints).toEqual([]);
      await page.close();
    }
    expect(answers[1]).toBe(answers[0]);
  });

  test("of 500 shots a build stays on the desk, and with the air stated every shot is flown", async () => {
    const page = await openPane(around.browser);
    await page.locator("#shots-text").fill(manyShots(1000, 2));
    await openAll(page);
    await page.locator("#air summary").click();
    await page.getByLabel("Altitude, ft").fill("5280");
    await page.getByLabel("Altitude, ft").press("Tab");
    await expect
      .poll(() => page.locator("#further").textContent(), { timeout: 60_000 })
      .toMatch(/by the flight model\. Every shot was flown\./);
    expect(await page.locator("#every-shot").count()).toBe(0);
    await page.close();
  });

  test("that cannot be understood gets a sentence", async () => {
    const { page } = await open();
    await pasteMany(page, 40_000, "no headings at all\n");
    await expect
      .poll(() => table(page).locator(".problem").textContent(), { timeout: 30_000 })
      .toMatch(/^There is no row with a figure from row 1 on/);
    await page.close();
  });
});
