import type { Browser, Page } from "playwright-core";
import { DEVELOPMENT_ADDRESS } from "../../src/hosts/excel/manifest-for.ts";
import { connectOffice, tellEvents } from "../office-host/connect-office.ts";
import { officeText, registryText } from "../office-host/load-office.ts";
import { addNewerMembers } from "../office-host/newer-members.ts";
import type { Service } from "../office-host/service.ts";
import type { BuiltFile } from "./build-addin.ts";
import { tellForbidden } from "./tell-forbidden.ts";

/** Where the pane's page loads the client library from. */
const LIBRARY = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

export interface SpreadsheetPane {
  readonly page: Page;
  /** Errors on the page and its console, and what its policy forbade. */
  readonly complaints: string[];
  /** Addresses other than those of the built files and the library that the page asked for. */
  readonly strange: string[];
  /** Scripts in the order in which they were asked for. */
  readonly scripts: string[];
}

export interface SpreadsheetLook {
  readonly forced?: boolean;
  /** Whether the person wants nothing to move. */
  readonly still?: boolean;
  /** The background of the spreadsheet's own theme, `#rrggbb`. */
  readonly background?: string;
}

/**
 * Opens the pane as the spreadsheet does: the built files at the address that they are `served` from, with the true client
 * library in the page, whose requests the given service answers.
 */
export async function openPaneInSpreadsheet(
  browser: Browser,
  service: Service,
  files: ReadonlyMap<string, BuiltFile>,
  served = DEVELOPMENT_ADDRESS,
  look: SpreadsheetLook = {},
): Promise<SpreadsheetPane> {
  const context = await browser.newContext({
    viewport: { width: 350, height: 900 },
    locale: "en-GB",
    forcedColors: look.forced ? "active" : "none",
    reducedMotion: look.still ? "reduce" : "no-preference",
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  const strange: string[] = [];
  const scripts: string[] = [];
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  await page.addInitScript(tellForbidden);
  await page.exposeFunction("sendToService", service.answer);
  service.tell = (events) => void page.evaluate(`(${tellEvents})(${JSON.stringify(events)})`);
  await page.route("**/*", async (route) => {
    const address = route.request().url();
    const own = address.startsWith(`${served}/`) ? files.get(address.slice(served.length + 1)) : undefined;
    const file =
      address === LIBRARY ? { body: connectedLibrary(look.background), contentType: "text/javascript" } : own;
    if (!file) strange.push(address);
    else if (file.contentType === "text/javascript") scripts.push(address);
    await route.fulfill(file ?? { status: 404, body: "" });
  });
  await page.goto(`${served}/pane.html`);
  await page.waitForSelector("#shots-text", { timeout: 15_000 }).catch((error) => {
    throw new Error([...complaints, String(error)].join("\n"));
  });
  return { page, complaints, strange, scripts };
}

function connectedLibrary(background?: string): string {
  const connect = `(${connectOffice})((request) => sendToService(request), "1.20");`;
  const theme = JSON.stringify({ bodyBackgroundColor: background, bodyForegroundColor: "#ffffff" });
  const themed = background
    ? `Object.defineProperty(Office.context, "officeTheme", { get: () => (${theme}), configurable: true });`
    : "";
  // Outside the tests' own runner functions that are written out call this to keep their names.
  return `globalThis.__name ??= (made) => made;\n${officeText()}\n${registryText()}\n(${addNewerMembers})();\n${connect}\n${themed}`;
}
