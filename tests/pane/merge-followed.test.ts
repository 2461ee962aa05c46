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

  test("loses nothing where pane and table change lines beside each other", () => {
    const table = lines("Build\tCarry", "A\t1", "B\t2", "C\t3", "D\t4");
    const of = (text: string, after: string) => mergeFollowed({ text, ticks: {} }, table, after);
    const last = of(table.replace("D\t4", "D\t44"), `${table.replace("C\t3", "C\t33")}\nE\t5`);
    expect(last).toMatchObject({
      text: lines("Build\tCarry", "A\t1", "B\t2", "C\t33", "D\t44", "E\t5"),
      kept: [],
    });
    const added = of(`${table}\nX\t9`, `${table.replace("D\t4", "D\t44")}\nE\t5`);
    expect(added.text).toBe(lines("Build\tCarry", "A\t1", "B\t2", "C\t3", "D\t44", "X\t9", "E\t5"));
    const between = of(table.replace("B\t2", "B\t22"), table.replace("C\t3", "C\t33"));
    expect(between.text).toBe(lines("Build\tCarry", "A\t1", "B\t22", "C\t33", "D\t4"));
    expect(of(table.replace("B\t2", "B\t22"), table.replace("B\t2", "N\t0\nB\t2")).text).toBe(
      lines("Build\tCarry", "A\t1", "N\t0", "B\t22", "C\t3", "D\t4"),
    );
  });

  test("keeps what the pane did to its rows when the table is sorted", () => {
    const sorted = lines("Build\tCarry", "A\t150", "A\t151", "B\t160");
    const put = merged(TABLE.replace("B\t160", "B\t163"), sorted);
    expect(put.text).toBe(sorted.replace("B\t160", "B\t163"));
    expect(merged(lines("Build\tCarry", "A\t150", "A\t151"), sorted).text).toBe(
      lines("Build\tCarry", "A\t150", "A\t151"),
    );
    const turned = lines("Build\tCarry", "A\t151", "B\t160", "A\t150");
    expect(merged(TABLE.replace("A\t150", "A\t149"), turned).text).toBe(turned.replace("A\t150", "A\t149"));
  });

  test("takes a row in once that someone wrote into both", () => {
    expect(merged(`${TABLE}\nC\t170`, `${TABLE}\nC\t170`).text).toBe(`${TABLE}\nC\t170`);
  });

  test("names the lines that stayed although the table changed them as well", () => {
    const mine = TABLE.replace("B\t160", "B\t163");
    expect(merged(mine, TABLE.replace("B\t160", "B\t162")).kept).toEqual([
      { row: 3, was: "B\t160", ours: "B\t163", theirs: "B\t162" },
    ]);
    expect(merged(mine, TABLE.replace("B\t160\n", "")).kept).toEqual([
      { row: 3, was: "B\t160", ours: "B\t163", theirs: null },
    ]);
    expect(merged(TABLE.replace("B\t160\n", ""), TABLE.replace("B\t160", "B\t162")).kept).toEqual([
      { row: 3, was: "B\t160", ours: null, theirs: "B\t162" },
    ]);
    expect(merged(mine, mine).kept).toEqual([]);
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

  test("misses no row that was added to the table, whatever lines either side changed", () => {
    const changed = fc.array(fc.boolean(), { minLength: 8, maxLength: 8 });
    const counts = fc.tuple(fc.nat(8), fc.nat(3), fc.nat(3));
    fc.assert(
      fc.property(counts, changed, changed, ([rows, mine, theirs], here, there) => {
        const table = Array.from({ length: rows }, (_, i) => `A\t${i}`);
        const side = (name: string, touched: boolean[], more: number) => [
          "Build\tCarry",
          ...table.map((row, i) => (touched[i] ? `${row}${name}` : row)),
          ...Array.from({ length: more }, (_, i) => `${name}\t${i}`),
        ];
        const after = side("table", there, theirs);
        const { text } = mergeFollowed(
          { text: side("pane", here, mine).join("\n"), ticks: {} },
          ["Build\tCarry", ...table].join("\n"),
          after.join("\n"),
        );
        const expected = table.map((row, i) => (here[i] ? `${row}pane` : there[i] ? `${row}table` : row));
        const found = text.split("\n");
        expect(found.slice(0, rows + 1)).toEqual(["Build\tCarry", ...expected]);
        expect(found.slice(rows + 1).sort()).toEqual(
          [...side("pane", [], mine), ...side("table", [], theirs)]
            .filter((row) => /^(pane|table)/.test(row))
            .sort(),
        );
      }),
    );
  });

  test("in whatever order the table comes back, has each line of the pane's once and in the table's order", () => {
    const table = Array.from({ length: 7 }, (_, i) => `A\t${i}`);
    const order = fc.shuffledSubarray([...table, "B\t1", "B\t2"], { minLength: 9 });
    fc.assert(
      fc.property(order, fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }), (sorted, touched) => {
        const mine = table.map((row, i) => (touched[i] ? `${row} mine` : row));
        const { text, kept } = mergeFollowed(
          { text: ["Build\tCarry", ...mine].join("\n"), ticks: {} },
          ["Build\tCarry", ...table].join("\n"),
          ["Build\tCarry", ...sorted].join("\n"),
        );
        const expected = sorted.map((row) => mine[table.indexOf(row)] ?? row);
        expect(text.split("\n")).toEqual(["Build\tCarry", ...expected]);
        expect(kept).toEqual([]);
      }),
    );
  });
});
