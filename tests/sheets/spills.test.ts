import { expect, it } from "vitest";
import { formula } from "../../src/sheets/sheet-draft.ts";
import { spillsOf } from "../../src/sheets/spills.ts";

it("spillsOf(sheet) finds the formulas that fill more cells than their own, and which cells", () => {
  const two = [
    [1, 2, 3],
    [4, 5, 6],
  ];
  const blocks = [
    { row: 0, column: 0, cells: [["a", 1, true, null, formula("1", 1)]] },
    {
      row: 4,
      column: 2,
      cells: [
        [null, null],
        [null, { formula: "TRANSPOSE(A1:B3)", value: 1, spills: two }],
      ],
    },
    { row: 20, column: 0, cells: [[{ formula: "X", value: "", spills: [] }]] },
  ];
  expect(spillsOf({ blocks })).toEqual([
    { formula: "TRANSPOSE(A1:B3)", answers: two, area: { row: 5, column: 3, rows: 2, columns: 3 } },
    { formula: "X", answers: [], area: { row: 20, column: 0, rows: 0, columns: 0 } },
  ]);
});
