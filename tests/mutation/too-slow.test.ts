import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { MUTATED_FOLDERS } from "./mutated-folders.ts";
import { TOO_SLOW } from "./too-slow.ts";

const testsOf = (folder: string) =>
  readdirSync(join("tests", folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".test.ts"))
    .map((name) => readFileSync(join("tests", folder, name), "utf8"));

it("names only titles that there are", () => {
  const tests = Object.keys(MUTATED_FOLDERS).flatMap(testsOf).join("\n");
  expect(TOO_SLOW.filter((part) => !tests.includes(part))).toEqual([]);
});
