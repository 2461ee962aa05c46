import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildInto, FIRST, gzippedBytes, PICTURES } from "./build-into.ts";

const folder = mkdtempSync(join(tmpdir(), "built-"));
const again = mkdtempSync(join(tmpdir(), "built-"));
afterAll(() => {
  for (const one of [folder, again]) rmSync(one, { recursive: true, force: true });
});

beforeAll(async () => {
  await buildInto(folder);
  await buildInto(again);
}, 240_000);

/** The two that the page names, and the one that reads long tables in a worker. */
const SCRIPTS_OF_THEIR_OWN = ["functions.js", "pane.js", "long-worker.js"];

const gzipped = (files: readonly string[]) => gzippedBytes(folder, files);
const scripts = () => readdirSync(folder).filter((file) => file.endsWith(".js"));

/** Files of a folder and of those in it. */
const filesIn = (one: string) =>
  readdirSync(one, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => relative(one, join(parentPath, name)))
    .sort();

// The budgets are the project's own, in thousands of bytes as they travel.
test("the script of the functions is at most 40 KB", () => {
  expect(gzipped(["functions.js"])).toBeLessThanOrEqual(40_000);
});

test("the pane's script and style are at most 60 KB before pictures and 100 KB with them", () => {
  expect(gzipped(FIRST)).toBeLessThanOrEqual(60_000);
  expect(gzipped([...FIRST, ...PICTURES])).toBeLessThanOrEqual(100_000);
});

test("what is fetched later goes by the name of its file", () => {
  const later = scripts().filter((file) => !SCRIPTS_OF_THEIR_OWN.includes(file));
  expect(later).toEqual(expect.arrayContaining(PICTURES));
  for (const file of later) expect(file).toMatch(/^[a-z][a-z0-9-]*\.js$/);
});

test("the add-in carries nothing of the open grid, no units library and no reference statistics", () => {
  for (const file of scripts()) {
    const text = readFileSync(join(folder, file), "utf8");
    expect(text, file).not.toMatch(/univer/i);
    expect(text, file).not.toMatch(/js-quantities|Incompatible units/);
    expect(text, file).not.toMatch(/stdlib/);
  }
});

test("no script of the add-in makes code out of text, which its pages forbid", () => {
  for (const file of scripts()) {
    expect(readFileSync(join(folder, file), "utf8"), file).not.toMatch(
      /\beval\(|new Function\(|\bFunction\("/,
    );
  }
});

test("two builds of one source are the same, byte for byte", () => {
  const files = filesIn(folder);
  expect(filesIn(again)).toEqual(files);
  for (const file of files) {
    expect(readFileSync(join(again, file)).equals(readFileSync(join(folder, file))), file).toBe(true);
  }
});
