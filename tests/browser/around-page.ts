import type { Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { openBrowser } from "./open-browser.ts";
import { type ServedPage, servePage } from "./serve-page.ts";
import { type OpenPage, openWorkbench } from "./workbench-page.ts";

/** Building the page, starting a server and a browser, with other tests beside them. */
const PATIENCE = 180_000;

/** What stands while the tests of a file run. */
export interface Around {
  readonly address: string;
  readonly browser: Browser;
}

/** What stands, and the one page that the tests of the file share. */
export interface AroundPage extends Around {
  readonly page: OpenPage["page"];
  readonly complaints: OpenPage["complaints"];
}

/** Serves the page and opens a browser around the tests of a file. To be read inside tests, not before. */
export function aroundBrowser(): Around {
  const around = {} as { address: string; browser: Browser };
  let served: ServedPage | undefined;
  beforeAll(async () => {
    [served, around.browser] = await Promise.all([servePage(), openBrowser()]);
    around.address = served.address;
  }, PATIENCE);
  afterAll(async () => {
    await around.browser?.close();
    served?.close();
  });
  return around;
}

/** The same with the page open. */
export function aroundPage(): AroundPage {
  const around = aroundBrowser() as AroundPage;
  beforeAll(async () => {
    Object.assign(around, await openWorkbench(around.browser, around.address));
  }, PATIENCE);
  return around;
}
