import { execFile } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { manifestFaults } from "../../manifest/manifest-faults.ts";

const METADATA = { functions: [{ helpUrl: "https://localhost:3000/functions.html#SCREEN" }] };
let folder: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "addin-"));
  await writeFile(join(folder, "functions.json"), JSON.stringify(METADATA));
});
afterEach(() => rm(folder, { recursive: true }));

const build = (address: string) =>
  promisify(execFile)(process.execPath, ["--import", "tsx", "src/hosts/excel/build-addin.ts", folder], {
    env: { ...process.env, ADDIN_URL: address },
  });
const text = (name: string) => readFile(join(folder, name), "utf8");

describe("a build for a shop's own address", { timeout: 60_000 }, () => {
  test("names that address everywhere and the development server nowhere", async () => {
    await build("https://clubs.example/fitting/");
    expect(JSON.parse(await text("functions.json"))).toEqual({
      functions: [{ helpUrl: "https://clubs.example/fitting/functions.html#SCREEN" }],
    });
    const manifest = await text("manifest.xml");
    expect(manifestFaults(manifest, "https://clubs.example/fitting")).toEqual([]);
    expect(await text("manifest-with-keys.xml")).toContain(
      '<ExtendedOverrides Url="https://clubs.example/fitting/shortcuts.json"/>',
    );
    for (const name of ["manifest.xml", "manifest-with-keys.xml", "functions.json", "shortcuts.json"]) {
      expect(await text(name), name).not.toContain("localhost");
    }
  });

  test("is refused where the address cannot be served from, and nothing is written", async () => {
    await expect(build("http://clubs.example")).rejects.toMatchObject({
      stderr: expect.stringContaining("https://"),
    });
    await expect(text("manifest.xml")).rejects.toThrow();
    expect(JSON.parse(await text("functions.json"))).toEqual(METADATA);
  });
});
