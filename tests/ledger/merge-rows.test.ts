import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Row, Table } from "../../src/ledger/cell.ts";
import { mergeRows } from "../../src/ledger/merge-rows.ts";
import { LEDGER } from "../../src/ledger/schema.ts";
import { rowsOf } from "../../src/ledger/table-rows.ts";
import { asHeld, demoRows, demoSession, laterSession, rowsOfSession } from "./demo-rows.ts";

const EMPTY: Table = { headings: LEDGER.columns.map(({ heading }) => heading), rows: [] };

describe("appending to the ledger", () => {
  test("adds each row once, however often it is done", () => {
    const first = mergeRows(EMPTY, demoRows(), LEDGER);
    expect(first).toMatchObject({ added: 4, already: 0, updated: 0 });
    const again = mergeRows(first.table, demoRows(), LEDGER);
    expect(again).toMatchObject({ added: 0, already: 4, updated: 0 });
    expect(again.table.rows).toEqual(first.table.rows);
  });

  test("gives back what was put in, days as days", () => {
    const { table } = mergeRows(EMPTY, demoRows(), LEDGER);
    expect(rowsOf(table, LEDGER)).toEqual(asHeld(demoRows()));
    expect(table.rows[0]![table.headings.indexOf("Date")]).toBe(46351);
  });

  test("puts a row right where facts have changed, and leaves the user's own columns and order alone", () => {
    const { table } = mergeRows(EMPTY, demoRows(), LEDGER);
    const turned: Table = {
      headings: ["Invoice", ...[...table.headings].reverse()],
      rows: [...table.rows].reverse().map((row, i) => [`No ${i}`, ...[...row].reverse()]),
    };
    const edited = rowsOfSession(demoSession({ player: "Rowan Tilsley-Marsh" }));
    const merged = mergeRows(turned, edited, LEDGER);
    expect(merged).toMatchObject({ added: 0, already: 0, updated: 4 });
    expect(merged.table.rows.map(([invoice]) => invoice)).toEqual(["No 0", "No 1", "No 2", "No 3"]);
    const rows = rowsOf(merged.table, LEDGER).reverse();
    expect(rows.map(({ player }) => player)).toEqual(edited.map(({ player }) => player));
  });

  test("adds a column that a table lacks only when a row fills it", () => {
    const without = (heading: string): Table => ({
      headings: EMPTY.headings.filter((one) => one !== heading),
      rows: [],
    });
    expect(mergeRows(without("Tempo"), demoRows(), LEDGER).change.columns).toEqual([]);
    const added = mergeRows(without("Chance"), demoRows(), LEDGER);
    expect(added.change.columns).toEqual([{ heading: "Chance", format: "0.000" }]);
    expect(rowsOf(added.table, LEDGER)[0]!.chance).toBe(demoRows()[0]!.chance);
  });

  test("leaves alone what a row says nothing of, and empties what it says there is nothing of", () => {
    const rows = demoRows().map((row) => ({ ...row, ordered: "a set", note: "kind" }));
    const { table } = mergeRows(EMPTY, rows, LEDGER);
    expect(mergeRows(table, demoRows(), LEDGER)).toMatchObject({ already: 4, updated: 0 });
    const emptied = demoRows().map((row) => ({ ...row, ordered: null }));
    const merged = mergeRows(table, emptied, LEDGER);
    expect(merged.updated).toBe(4);
    expect(rowsOf(merged.table, LEDGER).map(({ ordered, note }) => [ordered, note])).toEqual(
      rows.map(() => [null, "kind"]),
    );
  });

  test("knows a figure again of which a spreadsheet kept 15 digits", () => {
    const { table } = mergeRows(EMPTY, demoRows(), LEDGER);
    const kept = (cell: string | number | boolean | null) =>
      typeof cell === "number" ? Number(cell.toPrecision(15)) : cell;
    const rounded = { ...table, rows: table.rows.map((row) => row.map(kept)) };
    expect(rounded.rows).not.toEqual(table.rows);
    expect(mergeRows(rounded, demoRows(), LEDGER)).toMatchObject({ already: 4, updated: 0 });
  });

  test("takes out rows of a session that is given whole, and of no other", () => {
    const other = rowsOfSession(laterSession());
    const { table } = mergeRows(EMPTY, [...demoRows(), ...other], LEDGER);
    const session = String(demoRows()[0]!.session);
    const fewer = demoRows().slice(0, 2);
    expect(mergeRows(table, fewer, LEDGER)).toMatchObject({ removed: 0 });
    const merged = mergeRows(table, fewer, LEDGER, session);
    expect(merged).toMatchObject({ removed: 2, already: 2 });
    expect(rowsOf(merged.table, LEDGER)).toEqual(asHeld([...fewer, ...other]));
  });

  test("fills a blank row before it appends any, and keeps formulas of the user's own in it", () => {
    const blank = {
      headings: ["Doubled", ...EMPTY.headings],
      rows: [[0, ...EMPTY.headings.map(() => null)]],
    };
    const merged = mergeRows(blank, demoRows(), LEDGER);
    expect(merged).toMatchObject({ added: 4, updated: 0 });
    expect(merged.change.update[0]!.cells[0]).toBeUndefined();
    expect(rowsOf(merged.table, LEDGER)).toEqual(asHeld(demoRows()));
  });

  test("loses no row and doubles none, in whatever order and pieces sessions arrive", () => {
    const sessions = [0, 1, 2, 3].map((yards) => rowsOfSession(laterSession({}, yards)));
    fc.assert(
      fc.property(fc.array(fc.array(fc.nat(3), { maxLength: 5 }), { maxLength: 6 }), (batches) => {
        let table = EMPTY;
        for (const batch of batches) {
          table = mergeRows(
            table,
            batch.flatMap((which): readonly Row[] => sessions[which]!),
            LEDGER,
          ).table;
        }
        const entries = rowsOf(table, LEDGER).map(({ entry }) => entry);
        const expected = new Set(
          batches.flat().flatMap((which) => sessions[which]!.map(({ entry }) => entry)),
        );
        expect(new Set(entries)).toEqual(expected);
        expect(entries).toHaveLength(expected.size);
      }),
      { numRuns: 40 },
    );
  });
});
