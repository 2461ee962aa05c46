import { type Browser, chromium } from "playwright-core";
import { findBrowser } from "./find-browser.ts";

/** Starts a browser without a window that asks nobody for anything but the page. */
export async function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: await findBrowser(),
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
}
