import { describe, expect, it } from "vitest";
import { changedTable, isAsExpected, isIdle, type TableChange } from "../../src/sheets/table-change.ts";

const TABLE = {
  headings: ["Date", "Player"],
  rows: [
    ["1 May", "Ann"],
    ["2 May", null],
    ["3 May", "Bo"],
  ],
};
const NOTHING: TableChange = {
  table: "Shop",
  expected: { headings: TABLE.headings, rows: 3 },
  rename: [],
  columns: [],
  update: [],
  remove: [],
  append: [],
};

describe("changedTable(table, change)", () => {
  const changed = (change: Partial<TableChange>) => changedTable(TABLE, { ...NOTHING, ...change });

  it("leaves all as it was where nothing is to change", () => {
    expect(changed({})).toEqual(TABLE);
  });

  it("renames, adds columns at the right, which stay empty in rows that stand, and rows at the end", () => {
    expect(
      changed({
        rename: [{ column: 1, heading: "Golfer" }],
        columns: [{ heading: "Club", format: "@" }],
        append: [["4 May", "Cy", "7i"]],
      }),
    ).toEqual({
      headings: ["Date", "Golfer", "Club"],
      rows: [
        ["1 May", "Ann", null],
        ["2 May", null, null],
        ["3 May", "Bo", null],
        ["4 May", "Cy", "7i"],
      ],
    });
  });

  it("updates what is given, empties what is null, and takes rows away by their old places", () => {
    const update = [
      { row: 0, cells: [undefined, null] },
      { row: 2, cells: ["5 May", undefined] },
    ];
    expect(changed({ update, remove: [1] }).rows).toEqual([
      ["1 May", null],
      ["5 May", "Bo"],
    ]);
    expect(changed({ update: [{ row: 1, cells: ["9 May"] }] }).rows[1]).toEqual(["9 May", null]);
  });
});

describe("isIdle(change)", () => {
  it("is so only where every part is empty", () => {
    expect(isIdle(NOTHING)).toBe(true);
    const parts: Partial<TableChange>[] = [
      { rename: [{ column: 0, heading: "x" }] },
      { columns: [{ heading: "x", format: "@" }] },
      { update: [{ row: 0, cells: [] }] },
      { remove: [0] },
      { append: [[]] },
    ];
    for (const one of parts)
      for (const other of parts) expect(isIdle({ ...NOTHING, ...one, ...other })).toBe(false);
    for (const part of parts) expect(isIdle({ ...NOTHING, ...part })).toBe(false);
    expect(isIdle({ ...NOTHING, ...parts[0], ...parts[3], ...parts[4] })).toBe(false);
  });
});

describe("isAsExpected(change, headings, rows)", () => {
  it("is so where headings and count of rows are those that the change was worked out from", () => {
    const same = (headings: unknown[], rows = 3) => isAsExpected(NOTHING, headings, rows);
    expect(same(["Date", "Player"])).toBe(true);
    expect(same(["Date", "Golfer"])).toBe(false);
    expect(same(["Golfer", "Player"])).toBe(false);
    expect(same(["Date"])).toBe(false);
    expect(same(["Date", "Player", "Club"])).toBe(false);
    expect(same(["Date", "Player"], 4)).toBe(false);
  });

  it("takes a heading that is no text by how it reads, and none for an empty one", () => {
    const of = (expected: string, found: unknown) =>
      isAsExpected({ ...NOTHING, expected: { headings: [expected], rows: 1 } }, [found], 1);
    expect([of("2026", 2026), of("", null), of("", undefined), of("null", null)]).toEqual([
      true,
      true,
      true,
      false,
    ]);
  });
});
