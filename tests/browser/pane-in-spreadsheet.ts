import { readFileSync } from "node:fs";
import { build } from "esbuild";
import type { Browser, Page } from "playwright-core";
import { DEVELOPMENT_ADDRESS } from "../../src/hosts/excel/manifest-for.ts";
import { connectOffice } from "../office-host/connect-office.ts";
import { officeText } from "../office-host/load-office.ts";
import { addNewerMembers } from "../office-host/newer-members.ts";
import type { Service } from "../office-host/service.ts";

/** Where the pane's page loads the client library from. */
const LIBRARY = "https://appsforoffice.microsoft.com";

/** What the page may do: its own scripts and the library's, its own pictures, and nothing by eval. */
const POLICY = [
  "default-src 'none'",
  `script-src 'self' ${LIBRARY}`,
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
].join("; ");

export interface SpreadsheetPane {
  readonly page: Page;
  /** Errors on the page and its console. */
  readonly complaints: string[];
  /** Addresses other than its own and the library's that the page asked for. */
  readonly strange: string[];
}

/**
 * Opens the pane as the spreadsheet does: its own page at the address of the manifest, with the true client library
 * in it, whose requests the given service answers.
 */
export async function openPaneInSpreadsheet(browser: Browser, service: Service): Promise<SpreadsheetPane> {
  const context = await browser.newContext({ viewport: { width: 350, height: 900 }, locale: "en-GB" });
  const page = await context.newPage();
  const complaints: string[] = [];
  const strange: string[] = [];
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  await page.exposeFunction("sendToService", service.answer);
  const files: Record<string, { body: string; contentType: string }> = {
    [`${DEVELOPMENT_ADDRESS}/pane.html`]: { body: text("src/pane/pane.html"), contentType: "text/html" },
    [`${DEVELOPMENT_ADDRESS}/pane.js`]: { body: await paneScript(), contentType: "text/javascript" },
    [`${LIBRARY}/lib/1/hosted/office.js`]: { body: connectedLibrary(), contentType: "text/javascript" },
  };
  await page.route("**/*", async (route) => {
    const address = route.request().url();
    const file = files[address];
    if (file) await route.fulfill({ ...file, headers: { "content-security-policy": POLICY } });
    else {
      if (!address.endsWith("/favicon.ico")) strange.push(address);
      await route.fulfill({ status: 204, body: "" });
    }
  });
  await page.goto(`${DEVELOPMENT_ADDRESS}/pane.html`);
  await page.waitForSelector("#shots-text");
  return { page, complaints, strange };
}

const text = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");

function connectedLibrary(): string {
  return `${officeText()}\n(${addNewerMembers})();\n(${connectOffice})((request) => sendToService(request), "1.20");`;
}

async function paneScript(): Promise<string> {
  const built = await build({
    entryPoints: [new URL("../../src/pane/spreadsheet.tsx", import.meta.url).pathname],
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
