import { execFileSync, spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

const TOP = fileURLToPath(new URL("../..", import.meta.url));
const copy = mkdtempSync(join(tmpdir(), "copy-"));
const run = (command: string, ...words: string[]) =>
  spawnSync(process.execPath, [join(TOP, "node_modules", command), ...words], {
    cwd: copy,
    encoding: "utf8",
  });
const testsOf = (...files: string[]) => run("vitest/vitest.mjs", "run", "--test-timeout=60000", ...files);
const make = (...words: string[]) => run("tsx/dist/cli.mjs", "src/functions/new-function.ts", ...words);
const fill = (file: string, ...pairs: readonly (readonly [string | RegExp, string])[]) => {
  let text = readFileSync(join(copy, file), "utf8");
  for (const [from, to] of pairs) text = text.replace(from, to);
  writeFileSync(join(copy, file), text);
};

const OWN = "src/functions/balance/weight-double.ts";
const TEST = "tests/functions/balance/weight-double.test.ts";

beforeAll(() => {
  for (const part of [
    "src",
    "tests",
    "README.md",
    "DEVELOPERS.md",
    "package.json",
    "tsconfig.json",
    "biome.json",
    "webpack.config.js",
    ".gitignore",
  ])
    cpSync(join(TOP, part), join(copy, part), { recursive: true });
  symlinkSync(join(TOP, "node_modules"), join(copy, "node_modules"));
  // The linter takes what is ignored from the repository it stands in.
  execFileSync("git", ["init", "--quiet"], { cwd: copy });
}, 60_000);
afterAll(() => rmSync(copy, { recursive: true, force: true }));

describe("one command adds a function", { timeout: 300_000 }, () => {
  test("in the catalogue, the spreadsheet's script, the README and with a test, all tidy", () => {
    const made = make("balance", "WEIGHT.DOUBLE");
    expect(made.stderr).toBe("");
    expect(made.stdout.split("\n").slice(0, 5)).toEqual([
      OWN,
      TEST,
      "src/functions/catalogue.ts",
      "src/functions/spreadsheet.ts",
      "README.md",
    ]);
    expect(make("flight", "AIR.TWICE").status).toBe(0);
    const linted = run("@biomejs/biome/bin/biome", "check", "src/functions", "tests/functions");
    expect(linted.stdout + linted.stderr).not.toMatch(/Found \d+ error|FIXABLE/);
    expect(linted.status).toBe(0);
    const typed = run("typescript/bin/tsc", "-p", ".");
    expect(typed.stdout).toBe("");
    expect(testsOf("tests/readme.test.ts").status).toBe(0);
  });

  test("that fails its tests until it has been written, and then passes", () => {
    const before = testsOf(TEST, "tests/functions/examples.test.ts");
    expect(before.status).not.toBe(0);
    expect(before.stdout).toContain("WEIGHT.DOUBLE answers a published figure");
    expect(before.stdout).toMatch(/[34] failed/);
    // Its neighbour is taken out of the catalogue again, for it stays unwritten.
    fill("src/functions/catalogue.ts", [/\n {2}AIR_TWICE,/, ""]);
    // By hand: twice 2 is 4.
    fill(
      OWN,
      [/answer: \(\) =>.*/, "answer: (value: number) => 2 * value,"],
      ['answer: "TODO", source', "answer: 2, source"],
    );
    fill(TEST, ['toBe("TODO")', "toBe(4)"]);
    const after = testsOf(TEST, "tests/functions/examples.test.ts");
    expect(after.status, after.stdout).toBe(0);
  });

  test("but no name twice, no strange name and no family that is not", () => {
    for (const [words, why] of [
      [["balance", "SWINGWEIGHT"], "SWINGWEIGHT already"],
      [["balance", "double weight"], "capital letters"],
      [["irons", "DOUBLE"], "one of balance, set, shots, flight"],
    ] as const) {
      const refused = make(...words);
      expect(refused.status).toBe(2);
      expect(refused.stderr).toContain(why);
    }
  });
});
