import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { openBrowser } from "./open-browser.ts";
import { servePage } from "./serve-page.ts";
import { openWorkbench } from "./workbench-page.ts";

/** Takes the picture that README.md opens with, the page after the demo: `npx tsx tests/browser/take-pictures.ts`. */
const folder = fileURLToPath(new URL("./pictures/", import.meta.url));
mkdirSync(folder, { recursive: true });
const [served, browser] = await Promise.all([servePage(), openBrowser()]);
const { page } = await openWorkbench(browser, served.address);
await page.locator("#use-demo").click();
await page.locator("#make-sheets").click();
await page.locator(".make [role=status]", { hasText: "Added" }).waitFor();
// Both scroll to where the answer stands, and the grid draws once more.
await page.locator("#findings").scrollIntoViewIfNeeded();
await page.waitForTimeout(1500);
await page.screenshot({ path: `${folder}page.png` });
await browser.close();
served.close();
