import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mergeFollowed } from "../../src/pane/merge-followed.ts";

const lines = (...rows: string[]) => rows.join("\n");
const TABLE = lines("Build\tCarry", "A\t150", "B\t160", "A\t151");
const merged = (text: string, after: string, ticks = {}) => mergeFollowed({ text, ticks }, TABLE, after);

describe("a session whose table is followed", () => {
  test("takes in rows that were added to the table, at its end or in between", () => {
    const after = lines("Build\tCarry", "A\t150", "C\t170", "B\t160", "A\t151", "B\t161");
    expect(merged(TABLE, after).text).toBe(after);
  });

  test("keeps a line that was changed in the pane, while rows come in below it", () => {
    const mine = TABLE.replace("A\t151", "A\t152");
    expect(merged(mine, `${TABLE}\nB\t161`).text).toBe(`${mine}\nB\t161`);
  });

  test("keeps rows that were added in the pane, before those that came in", () => {
    expect(merged(`${TABLE}\nC\t170\n`, `${TABLE}\nB\t161`).text).toBe(`${TABLE}\nC\t170\nB\t161`);
  });

  test("keeps out rows that were taken out in the pane", () => {
    const mine = lines("Build\tCarry", "A\t150", "A\t151");
    expect(merged(mine, `${TABLE}\nB\t161`).text).toBe(`${mine}\nB\t161`);
  });

  test("follows a line that was changed in the table, and the pane's where both changed it", () => {
    expect(merged(TABLE, TABLE.replace("160", "162")).text).toBe(TABLE.replace("160", "162"));
    const mine = TABLE.replace("160", "163");
    expect(merged(mine, TABLE.replace("160", "162")).text).toBe(mine);
  });

  test("moves a tick with its line when rows come in above it or the table is sorted", () => {
    const ticks = { 3: false, 4: false };
    const above = lines("Build\tCarry", "C\t170", "A\t150", "B\t160", "A\t151");
    expect(merged(TABLE, above, ticks).ticks).toEqual({ 4: false, 5: false });
    const sorted = lines("Build\tCarry", "A\t150", "A\t151", "B\t160");
    expect(merged(TABLE, sorted, ticks).ticks).toEqual({ 3: false, 4: false });
  });

  test("tells like lines apart by their order, and drops the tick of a line that became another", () => {
    const twice = lines("Build\tCarry", "A\t150", "A\t150");
    const after = lines("Build\tCarry", "C\t170", "A\t150", "A\t150");
    expect(mergeFollowed({ text: twice, ticks: { 3: false } }, twice, after).ticks).toEqual({ 4: false });
    expect(merged(TABLE, TABLE.replace("160", "162"), { 3: false }).ticks).toEqual({});
  });

  test("with nothing changed in the pane is the table, whatever became of it", () => {
    const table = fc.array(fc.constantFrom("A\t1", "B\t2", "C\t3", "D\t4"), { maxLength: 12 });
    fc.assert(
      fc.property(table, table, (before, after) => {
        const [text, then] = [before.join("\n"), after.join("\n")];
        expect(mergeFollowed({ text, ticks: {} }, text, then).text).toBe(then);
      }),
    );
  });

  test("with rows only added on both sides loses none of either", () => {
    const rows = fc.array(fc.stringMatching(/^[A-D]\t[0-9]{3}$/), { maxLength: 6 });
    fc.assert(
      fc.property(rows, rows, rows, (before, mine, theirs) => {
        const table = ["Build\tCarry", ...before];
        const { text } = mergeFollowed(
          { text: [...table, ...mine].join("\n"), ticks: {} },
          table.join("\n"),
          [...table, ...theirs].join("\n"),
        );
        const found = text.split("\n");
        expect(found.slice(0, table.length)).toEqual(table);
        for (const row of [...mine, ...theirs]) expect(found).toContain(row);
      }),
    );
  });
});
