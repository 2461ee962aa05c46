import { describe, expect, test } from "vitest";
import { unwritable } from "../../../src/hosts/file/unwritable.ts";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx.ts";
import type { SheetPlan, WorkbookPlan } from "../../../src/sheets/plan.ts";
import { planOfCells } from "../../sheets/plan-of-cells.ts";
import { samplePlan } from "../../sheets/sample-plan.ts";

const area = (row: number, column: number, rows: number, columns: number) => ({ row, column, rows, columns });
const table = (headings: SheetPlan["blocks"][number]["cells"][number]) =>
  planOfCells([headings, headings.map(() => 1)], {
    tables: [{ name: "T", area: area(0, 0, 2, headings.length) }],
  });
/** Limits: "Excel specifications and limits", support.microsoft.com. */
const REFUSED: readonly [string, WorkbookPlan, RegExp][] = [
  ["no sheet", { sheets: [], names: [], active: "" }, /at least one sheet/],
  ["a first sheet that is hidden", planOfCells([], { hidden: true }), /"Cells", is hidden/],
  ["a first sheet that is not there", { ...planOfCells([]), active: "Shots" }, /"Shots"/],
  ["text longer than 32,767 characters", planOfCells([[1, "x".repeat(32_768)]]), /Cell B1 .* 32767/],
  [
    "a formula longer than 8,192",
    planOfCells([[{ formula: "1".repeat(8193), value: 1 }]]),
    /Cell A1 .* 8192/,
  ],
  ["a number that is none", planOfCells([[1], [Number.NaN]]), /Cell A2 .* NaN/],
  ["an answer that is none", planOfCells([[{ formula: "1/0", value: Infinity }]]), /Cell A1 .* Infinity/],
  [
    "rows beyond 1,048,576",
    planOfCells([], { blocks: [{ row: 1_048_576, column: 0, cells: [[1]] }] }),
    /1048576/,
  ],
  ["columns beyond 16,384", planOfCells([], { blocks: [{ row: 0, column: 16_384, cells: [[1]] }] }), /16384/],
  ["a heading that is a number", table(["Carry", 7]), /Table "T" at A1:B2/],
  ["two headings that differ in case only", table(["Carry", "carry"]), /headings that are texts, each once/],
  [
    "a formula that fills a cell in which something stands",
    planOfCells([[{ formula: "TRANSPOSE(A3:A4)", value: 1, spills: [[1, 2]] }, "mine"]]),
    /formula in A1 .* fills A1:B1, where something else stands/,
  ],
  [
    "a formula that fills a part of a merged area",
    planOfCells([[{ formula: "TRANSPOSE(A3:A4)", value: 1, spills: [[1, 2]] }]], {
      merges: [area(0, 1, 2, 1)],
    }),
    /fills A1:B1/,
  ],
  [
    "answers of a formula that are no rectangle",
    planOfCells([[{ formula: "A3:B4", value: 1, spills: [[1, 2], [3]] }]]),
    /no rectangle/,
  ],
  [
    "a table of headings alone",
    planOfCells([["a"]], { tables: [{ name: "T", area: area(0, 0, 1, 1) }] }),
    /a row/,
  ],
];

describe("unwritable", () => {
  test.each(REFUSED)("refuses %s, and says where", async (_, plan, message) => {
    expect(unwritable(plan)?.message).toMatch(message);
    expect(await writeXlsx(plan)).toMatchObject({ kind: "invalid" });
  });

  test("refuses two sheets of one name in any case", () => {
    const plan = planOfCells([]);
    const twice = { ...plan, sheets: [plan.sheets[0]!, { ...plan.sheets[0]!, name: "CELLS" }] };
    expect(unwritable(twice)?.message).toMatch(/same name/);
  });

  test("takes what stands just within the limits", () => {
    expect(unwritable(planOfCells([["x".repeat(32_767), 1]]))).toBeNull();
    expect(unwritable(samplePlan())).toBeNull();
  });
});
