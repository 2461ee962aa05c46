import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { runInThisContext } from "node:vm";

/**
 * Loads the true client library, unchanged, from node_modules into this very realm, so that the code under test meets
 * the global `Excel` and `Office` it meets in the spreadsheet. The library asks for a page; the little it asks for
 * while loading is stood in here. Its licence allows loading it for tests; it is never copied.
 */
export function loadOffice(): void {
  if ("Excel" in globalThis) return;
  const location = new URL("https://localhost:3000/pane.html");
  const element = () => ({ style: {}, setAttribute() {}, appendChild() {} });
  const page: Record<string, unknown> = {
    window: globalThis,
    location,
    navigator: { userAgent: "test host", language: "en-US", platform: "test host" },
    document: {
      location,
      URL: location.href,
      cookie: "",
      head: element(),
      getElementById: () => null,
      getElementsByTagName: () => [],
      createElement: element,
      addEventListener() {},
    },
    addEventListener() {},
  };
  for (const [name, value] of Object.entries(page)) {
    if (!(name in globalThis)) {
      Object.defineProperty(globalThis, name, { value, configurable: true, writable: true });
    }
  }
  const { log } = console;
  // The library reports the missing local storage of a page on the console; nobody needs to read that here.
  console.log = () => {};
  try {
    runInThisContext(officeText(), { filename: "office.js" });
  } finally {
    console.log = log;
  }
}

/** The library's own text. */
export function officeText(): string {
  const path = createRequire(import.meta.url).resolve("@microsoft/office-js/dist/excel-web-16.00.debug.js");
  return readFileSync(path, "utf8");
}
