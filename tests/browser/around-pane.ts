import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { openBrowser } from "./open-browser.ts";
import type { PaneTest } from "./pane-entry.ts";
import { openPane, type PaneLook } from "./pane-page.ts";

/** Starting a browser with other tests beside it. */
const PATIENCE = 60_000;

/** Keeps a browser open around the tests of a file. What it answers opens a pane in it, for use inside tests. */
export function aroundPane(): (look?: PaneLook, test?: PaneTest) => Promise<Page> {
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await openBrowser();
  }, PATIENCE);
  afterAll(() => browser?.close());
  return (look, test) => openPane(browser!, look, test);
}
