import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
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
    await expect(run(a, d)).rejects.toMatchObject({ code: 2, stderr: expect.stringContaining("EEXIST") });
  } finally {
    rmSync(folder, { recursive: true });
  }
}, 60_000);
