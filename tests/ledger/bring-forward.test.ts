import { describe, expect, test } from "vitest";
import { bringForward, formOf } from "../../src/ledger/bring-forward.ts";
import { changeBetween } from "../../src/ledger/change-between.ts";
import { keepPlan } from "../../src/ledger/keep-plan.ts";
import { mergeRows } from "../../src/ledger/merge-rows.ts";
import { LEDGER } from "../../src/ledger/schema.ts";
import { rowsOf } from "../../src/ledger/table-rows.ts";
import { changedTable } from "../../src/sheets/table-change.ts";
import { answer, demoRows } from "./demo-rows.ts";
import { FIRST_FORM } from "./first-form.ts";

describe("a ledger in the first form", () => {
  const brought = bringForward(FIRST_FORM);

  test("is known by its headings", () => {
    expect(formOf(FIRST_FORM)).toBe(1);
    expect(formOf(mergeRows({ headings: [], rows: [] }, demoRows(), LEDGER).table)).toBe(2);
  });

  test("is not seen in the empty row that a table keeps when all others have gone", () => {
    expect(formOf({ headings: ["Form", "Entry"], rows: [[null, null]] })).toBe(2);
  });

  test("keeps every row and every figure under today's headings", () => {
    expect(rowsOf(brought.table, LEDGER)).toEqual([
      expect.objectContaining({
        entry: "s1-1",
        date: "2025-12-09",
        shaftWeight: 85,
        carryMean: 151.25,
        carrySd: 4.5,
        carryN: 6,
        spinN: 0,
        chance: 0.97,
        ordered: "85 g mid",
        schema: 2,
      }),
      expect.objectContaining({
        entry: "s1-2",
        carryMean: 148.5,
        carrySd: 5.125,
        carryN: 5,
        spinMean: 5900,
        spinN: 5,
        chance: 0.03,
        ordered: null,
      }),
      expect.objectContaining({
        entry: "s2-1",
        shaftWeight: null,
        carryN: 7,
        carrySd: null,
        chance: null,
        ordered: null,
      }),
    ]);
    const invoice = brought.table.headings.indexOf("Invoice");
    expect(brought.table.rows.map((row) => row[invoice])).toEqual(["H-1", null, "H-9"]);
  });

  test("leaves the blank row of an emptied table blank", () => {
    const blank = { headings: FIRST_FORM.headings, rows: [FIRST_FORM.headings.map(() => null)] };
    expect(bringForward(blank).table.rows[0]!.every((cell) => cell === null)).toBe(true);
  });

  test("loses the rows of a session given whole that it no longer has", () => {
    const rows = [{ ...demoRows()[0]!, entry: "s1-1", session: "s1", build: "85 g mid" }];
    const plan = answer(keepPlan(FIRST_FORM, null, rows, [], { sheets: [], names: [] }, "s1"));
    const after = changedTable(FIRST_FORM, plan.changes[0]!);
    expect(rowsOf(after, LEDGER).map(({ entry }) => entry)).toEqual(["s1-1", "s2-1"]);
  });

  test("is brought forward once: a second time changes nothing", () => {
    expect(bringForward(brought.table)).toEqual({ table: brought.table, from: 2, changes: [] });
  });

  test("takes new rows afterwards, and a change says the same as doing it", () => {
    const merged = mergeRows(brought.table, demoRows(), LEDGER);
    expect(merged.added).toBe(4);
    expect(merged.table.rows).toHaveLength(7);
    const change = changeBetween(FIRST_FORM, merged.table);
    expect(changedTable(FIRST_FORM, change)).toEqual(merged.table);
    expect(change.rename).toContainEqual({ column: 0, heading: "Entry" });
  });
});
