import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { Script } from "node:vm";
import { build, type Plugin } from "esbuild";
import fc from "fast-check";
import * as vitest from "vitest";
import type { CollectedTest } from "./collect-tests.ts";

const HERE = "tests/mutation";
const STAND_INS: Readonly<Record<string, string>> = {
  vitest: "collect-tests.ts",
  "fast-check": "fewer-draws.ts",
};

/** Tests import the stand-ins; the stand-ins import what they stand in for. */
const standIns: Plugin = {
  name: "stand-ins",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^(vitest|fast-check)$/ }, ({ path, importer }) =>
      importer.startsWith(resolve(HERE))
        ? { path, external: true }
        : { path: resolve(HERE, STAND_INS[path]!) },
    );
    onLoad({ filter: /tests\/.*\.ts$/ }, ({ path }) => {
      const code = readFileSync(path, "utf8");
      return {
        loader: "ts",
        contents: code.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href)),
      };
    });
  },
};

/** A file of tests: loading it runs what stands outside its tests, and answers these. */
export type TestFile = Readonly<{ file: string; load: () => readonly CollectedTest[] }>;

/**
 * The tests of folders in one script, which starts afresh each time it is called: it loads the files of `src` that are
 * named, and leaves it to the caller to load those with tests.
 */
export async function bundleTests(
  source: string,
  folders: readonly string[],
): Promise<() => readonly TestFile[]> {
  const there = (folder: string, ending: RegExp) =>
    readdirSync(folder, { recursive: true, encoding: "utf8" })
      .filter((name) => ending.test(name))
      .sort()
      .map((name) => `./${join(folder, name)}`);
  const { outputFiles } = await build({
    stdin: {
      contents: `const { collected, inFile } = require("./${HERE}/collect-tests.ts");
        ${there(source, /\.ts$/)
          .map((file) => `require("${file}");`)
          .join("\n")}
        const file = (file, requireIt) => ({
          file,
          load() {
            const before = collected.length;
            inFile(file, requireIt);
            return collected.slice(before);
          },
        });
        module.exports = [${folders
          .flatMap((folder) => there(folder, /\.test\.ts$/))
          .map((one) => `file("${one}", () => require("${one}"))`)
          .join()}];`,
      resolveDir: process.cwd(),
    },
    bundle: true,
    write: false,
    platform: "node",
    format: "cjs",
    logLevel: "error",
    plugins: [standIns],
  });
  const script = new Script(`(function (require, module) {${outputFiles[0]!.text}\n})`, {
    filename: "tests.cjs",
  });
  const requireHere = createRequire(join(process.cwd(), "package.json"));
  const given: Readonly<Record<string, unknown>> = {
    vitest,
    "fast-check": { __esModule: true, default: fc },
  };
  // Some of what vitest expects asks for the file that is running.
  Object.assign(globalThis, { __vitest_worker__: {} });
  return () => {
    const module = { exports: [] as TestFile[] };
    script.runInThisContext()((name: string) => given[name] ?? requireHere(name), module);
    return module.exports;
  };
}
