import { mkdirSync } from "node:fs";
import type { Page } from "playwright-core";
import { pasteMany } from "./long-table.ts";
import { openBrowser } from "./open-browser.ts";
import { openAll, openPane, type PaneLook } from "./pane-page.ts";
import { servePage } from "./serve-page.ts";
import { openWorkbench } from "./workbench-page.ts";

/**
 * Takes a picture of each part of the pane, narrow and wide, light, dark and with forced colours, to be looked at:
 * `npx tsx tests/browser/take-pane-pictures.ts FOLDER`, and with a second word only those of one width and look
 * ("320-dark").
 */
const [folder, only = ""] = process.argv.slice(2);
if (!folder) {
  console.error("Name the folder that the pictures go into.");
  process.exit(2);
}
mkdirSync(folder, { recursive: true });
const [served, browser] = await Promise.all([servePage(), openBrowser()]);
for (const width of [320, 480]) {
  for (const look of ["light", "dark", "contrast"]) {
    if (!`${width}-${look}`.includes(only)) continue;
    const asked: PaneLook = { width, height: 12_000, dark: look === "dark", forced: look === "contrast" };
    const name = (part: string) => `${folder}/pane-${part}-${width}-${look}.png`;
    await takeParts(asked, name);
    await takeWriting(asked, name);
    await takeRest(asked, name);
    await takeLong(asked, name);
  }
}
await browser.close();
served.close();

type Name = (part: string) => string;

/** The parts of the pane one after the other, from nothing to a set with a fault. */
async function takeParts(look: PaneLook, name: Name): Promise<void> {
  const page = await openPane(browser, look);
  await page.locator("#bring").screenshot({ path: name("empty") });
  await openAll(page);
  await page.locator("#plan-builds").fill("95 g high-launch\n105 g mid-launch\n115 g mid-launch");
  await page.locator("#plan-words").waitFor();
  await page.locator("#plan").screenshot({ path: name("plan") });
  await page.locator("#use-demo").click();
  await openAll(page);
  await page.locator("#hit-next").waitFor();
  await page.locator("#set-text").waitFor();
  await page.locator("#keep-in-ledger").waitFor();
  for (const fold of await page.locator(".card summary").all()) await fold.click();
  for (const part of ["bring", "reading", "builds", "shots", "findings", "bench", "ledger"])
    await page.locator(`#${part}`).screenshot({ path: name(part) });
  const groups = page.locator("figure", { has: page.locator("[aria-labelledby^=groups]") });
  await groups.screenshot({ path: name("groups") });
  await page
    .locator("#set-text")
    .fill("target; swingweight; D2\ngrip; 50\nclub; length; shaft\n7i; long; 105");
  await page.locator("#set-problem").waitFor();
  await page.locator("#bench").screenshot({ path: name("bench-fault") });
  await page.close();
}

/** The bar that writes: at work, done and refused. */
async function takeWriting(look: PaneLook, name: Name): Promise<void> {
  const bar = async (page: Page, state: string) => {
    await page.locator(".make").screenshot({ path: name(state) });
    await page.close();
  };
  const working = await openPane(browser, look, { demo: true, slow: 6000 });
  await working.locator("#make-sheets").click();
  await expectHalf(working);
  await bar(working, "writing");
  const done = await openPane(browser, look, { demo: true });
  await done.locator("#make-sheets").click();
  await done.locator(".make", { hasText: "Added" }).waitFor();
  await bar(done, "done");
  const refused = await openPane(browser, look, { demo: true, refuses: "The workbook is protected." });
  await refused.locator("#make-sheets").click();
  await refused.locator(".make .problem").waitFor();
  await bar(refused, "refused");
}

/** Waits until half of the writing is done, for an empty bar shows nothing. */
async function expectHalf(page: Page): Promise<void> {
  await page.locator("progress").waitFor();
  await page.waitForFunction(() => document.querySelector("progress")!.value >= 0.5);
}

/** The head with two sessions, sessions that cannot be read, and a table that is followed. */
async function takeRest(look: PaneLook, name: Name): Promise<void> {
  const page = await openPane(browser, look, { demo: true, follows: true });
  await page.locator("#new-session").click();
  await page.locator("#use-demo").click();
  await page.locator(".head").screenshot({ path: name("head") });
  await page.getByRole("button", { name: "Take a table of this workbook" }).click();
  await page.getByLabel("Follow it").check();
  await page.getByRole("button", { name: "Take it" }).click();
  await page.locator(".follow").waitFor();
  await page.locator("#bring").screenshot({ path: name("table") });
  await page.locator(".follow").screenshot({ path: name("follow") });
  await page.close();
  const unread = await openPane(browser, look, { kept: { "bench-sessions": '{"version":2,"drafts":[]}' } });
  await unread.locator("#unread").screenshot({ path: name("unread") });
  await unread.close();
}

/** A long table once it has been read: in the page, for it takes a worker. */
async function takeLong({ width, dark, forced }: PaneLook, name: Name): Promise<void> {
  const { page } = await openWorkbench(browser, served.address);
  await page.setViewportSize({ width: width!, height: 12_000 });
  await page.emulateMedia({
    colorScheme: dark ? "dark" : "light",
    forcedColors: forced ? "active" : "none",
  });
  await pasteMany(page, 10_000);
  await page.locator("#long-table .headline").waitFor({ timeout: 60_000 });
  await page.locator("#long-table").screenshot({ path: name("long") });
  await page.close();
}
