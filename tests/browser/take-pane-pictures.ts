import { mkdirSync } from "node:fs";
import { openBrowser } from "./open-browser.ts";
import { openAll, openPane } from "./pane-page.ts";

/**
 * Takes a picture of each part of the pane, narrow and wide, light, dark and with forced colours, to be looked at:
 * `npx tsx tests/browser/take-pane-pictures.ts FOLDER`.
 */
const folder = process.argv[2];
if (!folder) {
  console.error("Name the folder that the pictures go into.");
  process.exit(2);
}
mkdirSync(folder, { recursive: true });
const browser = await openBrowser();
for (const width of [320, 480]) {
  for (const look of ["light", "dark", "contrast"]) {
    const page = await openPane(browser, {
      width,
      height: 6000,
      dark: look === "dark",
      forced: look === "contrast",
    });
    const name = (part: string) => `${folder}/pane-${part}-${width}-${look}.png`;
    await page.locator("#bring").screenshot({ path: name("empty") });
    await page.locator("#use-demo").click();
    await openAll(page);
    await page.locator("#hit-next").waitFor();
    for (const part of ["bring", "reading", "builds", "shots", "findings"])
      await page.locator(`#${part}`).screenshot({ path: name(part) });
    await page.close();
  }
}
await browser.close();
