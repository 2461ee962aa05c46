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
  return textOf("excel-web-16.00.debug.js");
}

/**
 * The part of the library's loader that functions and commands are registered with. The rest of the loader looks for
 * the spreadsheet around the page, which no test has.
 */
export function registryText(): string {
  const loader = textOf("office.debug.js");
  const start = loader.search(/\(function \(OfficeExt\) \{\s+var Association/);
  const end = loader.indexOf("var g_isExpEnabled");
  if (start < 0 || end < start) throw new Error("the loader has no registry where it was expected");
  return `var OfficeExt, Office;\n${loader.slice(start, end)}`;
}

function textOf(file: string): string {
  return readFileSync(createRequire(import.meta.url).resolve(`@microsoft/office-js/dist/${file}`), "utf8");
}
