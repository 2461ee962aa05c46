import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";

/** Presses "Save as .xlsx" and reads what comes. */
export async function savedFile(page: Page, timeout = 30_000): Promise<{ name: string; bytes: Uint8Array }> {
  const [download] = await Promise.all([
    page.waitForEvent("download", { timeout }),
    page.getByRole("button", { name: "Save as .xlsx" }).click({ timeout }),
  ]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}
