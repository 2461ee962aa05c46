import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { buildAddin } from "../browser/build-addin.ts";
import { buildPageInto } from "./build-into.ts";

const BUILDS: readonly [string, () => Promise<string>][] = [
  ["the add-in", () => buildAddin()],
  ["the page with the open grid", pageFolder],
];

async function pageFolder(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "built-"));
  await buildPageInto(folder);
  return folder;
}

test.each(BUILDS)(
  "the help page of the functions finds its icons beside it in %s",
  async (_name, build) => {
    const folder = await build();
    const page = readFileSync(join(folder, "functions.html"), "utf8");
    const icons = [...page.matchAll(/src(?:set)?="([^"]+)"/g)].map(([, file]) => file!);
    expect(icons).toHaveLength(2);
    for (const icon of icons) expect(existsSync(join(folder, icon)), icon).toBe(true);
    rmSync(folder, { recursive: true });
  },
  240_000,
);
