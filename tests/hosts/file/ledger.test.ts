import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { ledgerText } from "../../../src/ledger/ledger-text.ts";
import { demoRows, laterSession, rowsOfSession } from "../../ledger/demo-rows.ts";

const run = (...words: string[]) =>
  promisify(execFile)(process.execPath, ["--import", "tsx", "src/hosts/file/ledger.ts", ...words]);

test("a ledger file goes to Parquet and back unchanged, leaves a player out, and never overwrites", async () => {
  const folder = mkdtempSync(join(tmpdir(), "ledger-"));
  try {
    const [a, b, c, d] = ["a.csv", "b.parquet", "c.csv", "d.csv"].map((name) => join(folder, name)) as [
      string,
      string,
      string,
      string,
    ];
    const others = rowsOfSession(laterSession({ player: "Tess Marlow" }));
    const text = ledgerText([...demoRows(), ...others]);
    writeFileSync(a, text);
    await run(a, b);
    await run(b, c);
    expect(readFileSync(c, "utf8")).toBe(text);
    await run(b, d, "--without", String(demoRows()[0]!.player));
    expect(readFileSync(d, "utf8")).toBe(ledgerText(others));
    await expect(run(a, d)).rejects.toMatchObject({
      code: 2,
      stderr: `${d} is there already and is left as it is; another name would do.\n`,
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}, 60_000);

test("a ledger file that a spreadsheet wrote with decimal commas is read, and columns left out are named", async () => {
  const folder = mkdtempSync(join(tmpdir(), "ledger-"));
  try {
    const [a, b] = ["a.csv", "b.csv"].map((name) => join(folder, name)) as [string, string];
    const { data } = Papa.parse<string[]>(ledgerText(demoRows()).trimEnd());
    const local = (cell: string) =>
      cell === "TRUE"
        ? "WAHR"
        : cell === "FALSE"
          ? "FALSCH"
          : cell
              .replace(/^(-?\d+)\.(\d+(?:e-?\d+)?)$/, "$1,$2")
              .replace(/^(\d{4})-(\d\d)-(\d\d)$/, "$3.$2.$1");
    const lines = data.map((row, i) => [...row.map(local), i === 0 ? "Rechnung" : "H-1"]);
    writeFileSync(a, Papa.unparse(lines, { delimiter: ";" }));
    expect(readFileSync(a, "utf8")).toContain("WAHR");
    const { stdout } = await run(a, b);
    expect(stdout).toContain("Columns left out: Rechnung.");
    expect(readFileSync(b, "utf8")).toBe(ledgerText(demoRows()));
  } finally {
    rmSync(folder, { recursive: true });
  }
}, 60_000);

test("a ledger file with codes has no name in it, the same codes in both forms, and needs a good secret", async () => {
  const folder = mkdtempSync(join(tmpdir(), "ledger-"));
  try {
    const [a, b, c, d] = ["a.csv", "b.csv", "c.parquet", "d.csv"].map((name) => join(folder, name)) as [
      string,
      string,
      string,
      string,
    ];
    writeFileSync(a, ledgerText(demoRows()));
    await run(a, b, "--codes", "harrow lane 1");
    await run(a, c, "--codes", "harrow lane 1");
    await run(c, d);
    expect(readFileSync(b, "utf8")).not.toMatch(/rowan|tilsley/i);
    expect(readFileSync(b, "utf8")).toMatch(/P-[0-9a-f]{16}/);
    expect(readFileSync(d, "utf8")).toBe(readFileSync(b, "utf8"));
    await expect(run(a, join(folder, "e.csv"), "--codes", "abc")).rejects.toMatchObject({
      code: 2,
      stderr: expect.stringContaining("secret"),
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}, 60_000);
