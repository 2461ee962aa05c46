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
    await openAll(page);
    await page.locator("#plan-builds").fill("95 g high-launch\n105 g mid-launch\n115 g mid-launch");
    await page.locator("#plan-words").waitFor();
    await page.locator("#plan").screenshot({ path: name("plan") });
    await page.locator("#use-demo").click();
    await openAll(page);
    await page.locator("#hit-next").waitFor();
    await page.locator("#set-text").waitFor();
    for (const part of ["bring", "reading", "builds", "shots", "findings", "bench"])
      await page.locator(`#${part}`).screenshot({ path: name(part) });
    await page
      .locator("#set-text")
      .fill("target; swingweight; D2\ngrip; 50\nclub; length; shaft\n7i; long; 105");
    await page.locator("#set-problem").waitFor();
    await page.locator("#bench").screenshot({ path: name("bench-fault") });
    await page.close();
  }
}
await browser.close();
