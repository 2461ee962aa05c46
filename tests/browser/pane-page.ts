import { build } from "esbuild";
import type { Browser, Page } from "playwright-core";
import type { PaneTest } from "./pane-entry.ts";

export interface PaneLook {
  readonly width?: number;
  readonly height?: number;
  readonly dark?: boolean;
  readonly forced?: boolean;
  /** How figures are written: `en-GB` unless told otherwise. */
  readonly locale?: string;
}

let script: Promise<string> | null = null;

/** Opens a page with nothing in it but the pane and a host of memory. Any error on the page fails the test. */
export async function openPane(browser: Browser, look: PaneLook = {}, test: PaneTest = {}): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: look.width ?? 320, height: look.height ?? 800 },
    colorScheme: look.dark ? "dark" : "light",
    forcedColors: look.forced ? "active" : "none",
    reducedMotion: "reduce",
    locale: look.locale ?? "en-GB",
  });
  const page = await context.newPage();
  page.on("pageerror", (error) => {
    throw error;
  });
  script ??= bundle();
  await page.setContent(
    `<!doctype html><html lang="en"><head><title>Pane</title><style>html,body{margin:0;height:100%}
    h1{position:absolute;clip-path:inset(50%)}</style></head>
    <body><header><h1>Pane</h1></header><main id="pane"></main></body></html>`,
  );
  await page.evaluate((asked) => {
    globalThis.paneTest = asked;
  }, test);
  await page.addScriptTag({ content: await script });
  await page.waitForSelector("#shots-text");
  return page;
}

async function bundle(): Promise<string> {
  const built = await build({
    entryPoints: [new URL("./pane-entry.ts", import.meta.url).pathname],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2022",
    jsx: "automatic",
    jsxImportSource: "preact",
    logLevel: "error",
  });
  return built.outputFiles[0]!.text;
}

/** Opens every part of the pane. */
export async function openAll(page: Page): Promise<void> {
  const closed = page.locator(".section:not([open]) > summary");
  while ((await closed.count()) > 0) await closed.first().click();
}
