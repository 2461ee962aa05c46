import { describe, expect, test } from "vitest";
import { readLedgerText } from "../../src/ledger/ledger-text.ts";
import { exportLedger, exportWords } from "../../src/pane/ledger-export.ts";
import { forgottenWords } from "../../src/pane/ledger-forgotten-words.ts";
import { keepSession } from "../../src/pane/ledger-keeping.ts";
import { unkeptWords } from "../../src/pane/ledger-unkept.ts";
import { answer, asHeld, demoRows, demoSession } from "../ledger/demo-rows.ts";
import { memoryHost } from "./memory-host.ts";

describe("exporting the workbook's ledger", () => {
  test("hands over every row, and says which columns stay here", async () => {
    const host = memoryHost();
    answer(await keepSession(host, demoSession()));
    const table = host.held.get("Ledger")!;
    host.held.set("Ledger", {
      headings: [...table.headings, "Invoice"],
      rows: table.rows.map((row) => [...row, "H-1"]),
    });
    const made = answer(await exportLedger(host, ""));
    expect(readLedgerText(made.text)).toEqual(asHeld(demoRows()));
    expect(exportWords(made, true, "this page")).toBe(
      "4 rows saved as a file. Columns of your own stay here: Invoice.",
    );
    expect(exportWords({ ...made, own: [] }, false, "the spreadsheet")).toBe(
      "The spreadsheet cannot hand over a file: copy the 4 rows from the box below.",
    );
  });

  test("has codes for names where there is a secret, and refuses one that is guessed at once", async () => {
    const host = memoryHost();
    answer(await keepSession(host, demoSession()));
    expect(answer(await exportLedger(host, "harrow lane 1")).text).not.toMatch(/rowan|tilsley/i);
    expect(await exportLedger(host, "abc")).toMatchObject({ kind: "invalid" });
    expect(await exportLedger(memoryHost(), "")).toMatchObject({ message: expect.stringContaining("empty") });
  });
});

describe("what the ledger does not hold", () => {
  test("is said of a session that is open and not kept, or kept with fewer shots", () => {
    expect(unkeptWords([], demoSession(), undefined)).toContain("not in the ledger yet");
    expect(unkeptWords(demoRows(), demoSession(), undefined)).toBe("");
    const fewer = demoRows().slice(0, 3);
    expect(unkeptWords(fewer, demoSession(), String(fewer[0]!.session))).toContain("18 shots");
    expect(unkeptWords(demoRows(), null, undefined)).toBe("");
  });

  test("is named when a player is taken out: every place where the name may still stand", () => {
    const said = forgottenWords("Ann", { entries: 4, shots: 24 });
    for (const place of [
      "4 rows and 24 shots",
      "sessions that are open",
      "Comparison, Player, Shots and Build",
      "tracking sheet",
    ])
      expect(said).toContain(place);
  });
});
