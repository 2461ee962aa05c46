import { describe, expect, test } from "vitest";
import type { Row } from "../../src/ledger/cell.ts";
import { codedRows, hmacSha256 } from "../../src/ledger/coded-rows.ts";
import { mapTrackingSheet } from "../../src/ledger/map-tracking-sheet.ts";
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

  test("cannot be undone with a list of names, days and clubs", async () => {
    const text =
      "Date,Player,Club,Build,Carry\n2026-03-14,Tess Marlow,7 iron,85 g,150\n2026-03-14,Tess Marlow,7 iron,95 g,151";
    const rows = answer(mapTrackingSheet(text)).rows;
    const coded = answer(await codedRows(rows, "harrow lane 1"));
    // Whoever maps the list again gets the very names of sessions and rows that the ledger has.
    const guessed = answer(mapTrackingSheet(text)).rows.flatMap(({ session, entry }) => [session, entry]);
    expect(rows.flatMap(({ session, entry }) => [session, entry])).toEqual(guessed);
    for (const name of guessed) expect(JSON.stringify(coded)).not.toContain(String(name));
    expect(new Set(coded.map(({ session }) => session)).size).toBe(1);
    expect(new Set(coded.map(({ entry }) => entry)).size).toBe(2);
  });

  test("hide a name in any text of any row, whatever its accents, and leave other words alone", async () => {
    const row = (more: Row): Row => ({
      entry: "e",
      session: "s",
      build: "85 g mid",
      club: "7 iron",
      ...more,
    });
    const rows = [
      row({ player: "José Ramírez", build: "Jose's gamer", ordered: "JOSÉ'S GAMER", head: "ramirez pro" }),
      row({ player: "Ann Bo", profile: "for Anns", flex: "Bo", source: "brought in: José's sheet" }),
      row({ player: "Ann Bo", club: "José 7", verdict: "Ann says so", build: "scanned bonus" }),
    ];
    const coded = answer(await codedRows(rows, "harrow lane 1"));
    expect(JSON.stringify(coded)).not.toMatch(/jos|ram.rez|anns|"bo"|ann says/i);
    expect(coded[0]!.build).toMatch(/^B-[0-9a-f]{16}$/);
    expect(coded[0]!.ordered).toBe(coded[0]!.build);
    expect(coded[0]).toMatchObject({ club: "7 iron", head: null });
    expect(coded[1]).toMatchObject({ build: "85 g mid", profile: null, flex: null, source: null });
    expect(coded[2]).toMatchObject({ build: "scanned bonus", club: null, verdict: null });
  });

  test("ask for a secret that is not guessed at once", async () => {
    expect(await codedRows([], "abc")).toMatchObject({ kind: "invalid" });
  });
});
