import { expect, test } from "vitest";
import type { KeptLine } from "../../src/pane/kept-line.ts";
import { mergeFollowed } from "../../src/pane/merge-followed.ts";
import { takeTheirs } from "../../src/pane/take-theirs.ts";

const TABLE = "Build\tCarry\nA\t1\nB\t2\nC\t3\nD\t4";

test("lines that stayed are the table's once that is asked for, and ticks go with the other lines", () => {
  const mine = { text: "Build\tCarry\nB\t2\nC\t33\nD\t4", ticks: { 3: false, 4: false } };
  const changed = "Build\tCarry\nA\t11\nB\t2\nC\t34\nD\t4";
  const { kept, ...merged } = mergeFollowed(mine, TABLE, changed);
  expect(kept).toHaveLength(2);
  expect(takeTheirs(merged, kept)).toEqual({ text: changed, ticks: { 5: false } });
});

test("a line that the table has no more goes once that is asked for", () => {
  const mine = { text: TABLE.replace("C\t3", "C\t33"), ticks: {} };
  const shorter = TABLE.replace("C\t3\n", "");
  const { kept, ...merged } = mergeFollowed(mine, TABLE, shorter);
  expect(takeTheirs(merged, kept).text).toBe(shorter);
});

test("without a line that stayed nothing changes", () => {
  const kept: KeptLine[] = [];
  expect(takeTheirs({ text: TABLE, ticks: { 2: false } }, kept)).toEqual({
    text: TABLE,
    ticks: { 2: false },
  });
});
