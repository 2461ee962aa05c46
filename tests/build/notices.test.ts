import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildInto, buildPageInto } from "./build-into.ts";

/** May be shipped with a program under MIT when their texts go with it; Apache-2.0 with its notices too. */
const ALLOWED = ["MIT", "ISC", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "0BSD"];

/** Packages whose archive has no file with their licence, looked at by hand: each states one of the above. */
const WITHOUT_TEXT = [
  "@univerjs/protocol",
  "franc-min",
  "ot-json1",
  "ot-text-unicode",
  "react-remove-scroll-bar",
  "unicount",
];

const addin = mkdtempSync(join(tmpdir(), "built-"));
const page = mkdtempSync(join(tmpdir(), "built-"));
const pageAgain = mkdtempSync(join(tmpdir(), "built-"));
afterAll(() => {
  for (const one of [addin, page, pageAgain]) rmSync(one, { recursive: true, force: true });
});
beforeAll(async () => {
  await buildInto(addin);
  await buildPageInto(page);
  await buildPageInto(pageAgain);
}, 400_000);

interface Notice {
  readonly name: string;
  readonly licence: string;
  readonly text: string;
}

function noticesOf(file: string): Notice[] {
  const parts = readFileSync(file, "utf8")
    .split(/^={72}\n/m)
    .slice(1);
  return parts.map((part) => {
    const [, name, licence, text] = /^(\S+) \S+, licence: (.*)\n\n([\s\S]*)$/.exec(part) ?? [];
    return { name: name!, licence: licence!, text: text! };
  });
}

const shipped = () => [
  ...["functions", "pane", "long-worker"].flatMap((part) => noticesOf(join(addin, `${part}-notices.txt`))),
  ...noticesOf(join(page, "page-notices.txt")),
];

describe("what is shipped of others", () => {
  test("has a licence that allows it, whole and beside the scripts", () => {
    expect(shipped().filter(({ licence }) => !ALLOWED.includes(licence))).toEqual([]);
    const bare = shipped().filter(
      ({ text }) => !/copyright|permission|license/i.test(text.replace(/^The package carries.*/, "")),
    );
    expect([...new Set(bare.map(({ name }) => name))].sort()).toEqual(WITHOUT_TEXT);
  });

  test("is named by what is in the scripts, not by a list kept by hand", () => {
    const names = (part: string) => noticesOf(join(addin, `${part}-notices.txt`)).map(({ name }) => name);
    expect(names("functions")).toEqual(["simple-statistics"]);
    expect(names("pane")).toEqual(["d3-array", "node-diff3", "papaparse", "preact", "simple-statistics"]);
    expect(noticesOf(join(page, "page-notices.txt")).map(({ name }) => name)).toContain("@univerjs/core");
    // Tools and references of the tests are not passed on.
    for (const name of ["webpack", "js-quantities", "exceljs", "odex", "vitest"]) {
      expect(shipped().map((notice) => notice.name)).not.toContain(name);
    }
  });
});

const filesOf = (folder: string) =>
  (readdirSync(folder, { recursive: true }) as string[]).filter((file) => /\.\w+$/.test(file)).sort();

test("two builds of the page of one source are the same, byte for byte", () => {
  const files = filesOf(page);
  expect(files).toContain("long-worker.js");
  expect(filesOf(pageAgain)).toEqual(files);
  for (const file of files) {
    expect(readFileSync(join(pageAgain, file)).equals(readFileSync(join(page, file))), file).toBe(true);
  }
});
