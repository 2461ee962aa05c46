import { describe, expect, test } from "vitest";
import { codedRows, hmacSha256 } from "../../src/ledger/coded-rows.ts";
import { mergeRows } from "../../src/ledger/merge-rows.ts";
import { removePlayer } from "../../src/ledger/remove-player.ts";
import { LEDGER, SHOTS } from "../../src/ledger/schema.ts";
import { shotRows } from "../../src/ledger/shot-rows.ts";
import { changedTable } from "../../src/sheets/table-change.ts";
import { answer, demoSession, laterSession, rowsOfSession } from "./demo-rows.ts";

const NONE = { headings: [], rows: [] };
const theirs = demoSession({ player: "Rowan Tilsley" });
const others = laterSession({ player: "Tess Marlow" });
const ledger = mergeRows(NONE, [...rowsOfSession(theirs), ...rowsOfSession(others)], LEDGER).table;
const shots = mergeRows(NONE, [...shotRows(theirs), ...shotRows(others)], SHOTS).table;

describe("taking a player out", () => {
  test("leaves no row and no shot of theirs, and all of the others", () => {
    const removal = removePlayer(ledger, shots, " tilsley,  ROWAN");
    expect(removal).toMatchObject({ entries: 4, shots: 24 });
    const [after, archive] = [
      changedTable(ledger, removal.changes[0]!),
      changedTable(shots, removal.changes[1]!),
    ];
    expect(JSON.stringify([after, archive])).not.toContain("Rowan");
    expect(after.rows).toEqual(ledger.rows.slice(4));
    expect(archive.rows).toEqual(shots.rows.slice(24));
  });

  test("does nothing for an empty name or one that nobody has", () => {
    expect(removePlayer(ledger, shots, " ").changes).toEqual([]);
    expect(removePlayer(ledger, shots, "Rowan").changes).toEqual([]);
  });
});

describe("codes for names", () => {
  test("are made by the published HMAC-SHA-256", async () => {
    // RFC 4231, test case 2.
    expect(await hmacSha256("Jefe", "what do ya want for nothing?")).toBe(
      "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843",
    );
  });

  test("are the same for one player, others for others and under another secret, and leave no name behind", async () => {
    const rows = [
      ...rowsOfSession(demoSession({ player: "Rowan Tilsley", title: "Rowan's irons" })),
      ...rowsOfSession(laterSession({ player: "rowan  tilsley" })),
      ...rowsOfSession(laterSession({ player: "Tess Marlow" }, 2)),
    ];
    const coded = answer(await codedRows(rows, "harrow lane 1"));
    const again = answer(await codedRows(rows, "harrow lane 1"));
    const other = answer(await codedRows(rows, "harrow lane 2"));
    expect(coded).toEqual(again);
    expect(new Set(coded.map(({ player }) => player)).size).toBe(2);
    expect(other[0]!.player).not.toBe(coded[0]!.player);
    expect(JSON.stringify(coded)).not.toMatch(/rowan|tess/i);
  });

  test("ask for a secret that is not guessed at once", async () => {
    expect(await codedRows([], "abc")).toMatchObject({ kind: "invalid" });
  });
});
