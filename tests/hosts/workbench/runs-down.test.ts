import { expect, it } from "vitest";
import { RunsDown } from "../../../src/hosts/workbench/runs-down.ts";

const lines = [
  ["a", "b"],
  ["a", undefined],
  ["c", "b"],
  ["a", "b"],
];

it("makes one area of cells that have the same value, one below the other", () => {
  const runs = new RunsDown<string>();
  for (const [row, line] of lines.entries()) {
    for (const [column, value] of line.entries()) runs.add(row, column, value);
  }
  const area = (row: number, column: number, rows: number) => ({ row, column, rows, columns: 1 });
  expect(runs.all()).toEqual([
    [area(0, 0, 2), "a"],
    [area(2, 0, 1), "c"],
    [area(3, 0, 1), "a"],
    [area(0, 1, 1), "b"],
    [area(2, 1, 2), "b"],
  ]);
});

it("leaves out columns that have no value at all", () => {
  const runs = new RunsDown<string>();
  runs.add(3, 5, "far");
  expect(runs.all()).toEqual([[{ row: 3, column: 5, rows: 1, columns: 1 }, "far"]]);
});
