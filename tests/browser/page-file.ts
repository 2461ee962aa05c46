import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";

/** Presses "Save as .xlsx" and reads what comes. */
export async function savedFile(page: Page): Promise<{ name: string; bytes: Uint8Array }> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save as .xlsx" }).click(),
  ]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}
