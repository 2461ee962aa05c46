import fc from "fast-check";
import { strFromU8, unzipSync } from "fflate";
import { readXlsx } from "hucre";
import { describe, expect, test } from "vitest";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx.ts";
import { isProblem } from "../../../src/outcome/problem.ts";
import type { Block, CellValue, WorkbookPlan } from "../../../src/sheets/plan.ts";
import { contentsOfPlan } from "../../contents-of-plan.ts";
import { planOfCells } from "../../sheets/plan-of-cells.ts";
import { AWKWARD_TEXTS, samplePlan } from "../../sheets/sample-plan.ts";
import { contentsOfXlsx } from "./contents-of-xlsx.ts";

async function written(plan: WorkbookPlan): Promise<Uint8Array> {
  const bytes = await writeXlsx(plan);
  if (isProblem(bytes)) throw new Error(bytes.message);
  return bytes;
}

function part(bytes: Uint8Array, path: string): string {
  return strFromU8(unzipSync(bytes)[path]!);
}

/** What no part of a file may hold. Source: XML 1.0, 2.2. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const FORBIDDEN = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/;

describe("writeXlsx", () => {
  test("holds everything that the sample plan asks for", async () => {
    expect(await contentsOfXlsx(await written(samplePlan()))).toEqual(contentsOfPlan(samplePlan()));
  });

  test("marks a formula that fills several cells as one that may grow, also between the rows of a long table", async () => {
    const spill: CellValue = { formula: "A1:A2", value: 0.5, spills: [[0.5], [1.5]] };
    const rows = Array.from({ length: 1200 }, (_, i): CellValue[] => [i + 0.5, i === 600 ? spill : null]);
    const plan = planOfCells(rows);
    const bytes = await written(plan);
    // Source: ECMA-376 part 1, 18.3.1.40 (f, its t and ref), and [MS-XLSX] 2.3, cell metadata of dynamic arrays.
    expect(part(bytes, "xl/worksheets/sheet1.xml")).toMatch(
      /<c r="B601"[^>]* cm="1"[^>]*><f t="array" ref="B601:B602">A1:A2<\/f><v>0.5<\/v><\/c>/,
    );
    expect(part(bytes, "xl/metadata.xml")).toMatch(/name="XLDAPR"[\s\S]* fDynamic="1"/);
    expect(await contentsOfXlsx(bytes)).toEqual(contentsOfPlan(plan));
  });

  test("keeps a look that is painted over a part of another", async () => {
    const area = (row: number, column: number, rows: number, columns: number) => ({
      row,
      column,
      rows,
      columns,
    });
    const plan = planOfCells(
      [
        [null, 2, 3],
        [4, null, 6],
        [7, 8, 9],
        [null, null, 1],
      ],
      {
        styles: [
          { area: area(0, 0, 3, 2), style: "input" },
          { area: area(1, 1, 5, 3), style: "warning" },
          { area: area(2, 0, 1, 2), style: "plain" },
        ],
        formats: [
          { area: area(0, 1, 3, 1), format: "0.00" },
          { area: area(1, 1, 1, 1), format: "General" },
        ],
      },
    );
    expect(await contentsOfXlsx(await written(plan))).toEqual(contentsOfPlan(plan));
  });

  test("writes a sheet without cells, and cells far from the first", async () => {
    const empty = planOfCells([]);
    expect(await contentsOfXlsx(await written(empty))).toEqual(contentsOfPlan(empty));
    const far = planOfCells([["here"]], { blocks: [{ row: 40, column: 30, cells: [["here", 1]] }] });
    expect(await contentsOfXlsx(await written(far))).toEqual(contentsOfPlan(far));
  });

  test("writes a long table as it writes a short one, whatever stands between its rows", async () => {
    const area = (row: number, column: number, rows: number, columns: number) => ({
      row,
      column,
      rows,
      columns,
    });
    const rows = Array.from({ length: 1400 }, (_, i): CellValue[] => {
      const remark = i % 97 === 5 ? AWKWARD_TEXTS[i % AWKWARD_TEXTS.length]! : `shot ${i} <&>\u0007 `;
      const formula = { formula: `STDEV.S(B${i + 2},1)`, value: i % 3 === 0 ? "text & more" : i / 7 };
      return [i % 2 === 0, i / 3, i % 5 === 0 ? null : remark, formula, i % 4 === 0 ? 7 - i : null];
    });
    const plan = planOfCells([], {
      blocks: [
        { row: 1420, column: 3, cells: [["below", 1]] },
        { row: 1, column: 2, cells: [["Keep", "Figure", "Remark", "Spread", "="], ...rows] },
        { row: 0, column: 0, cells: [["above"]] },
      ],
      styles: [
        { area: area(1, 2, 1, 5), style: "headingCentre" },
        { area: area(2, 3, 1000, 1), style: "figure" },
        { area: area(600, 2, 40, 8), style: "input" },
        { area: area(700, 0, 300, 1), style: "group" },
      ],
      formats: [{ area: area(2, 3, 1400, 1), format: "0.00" }],
      heights: [{ row: 800, rows: 2, points: 40 }],
      notes: [{ row: 900, column: 4, text: "a note in the middle" }],
      tables: [{ name: "Long", area: area(1, 2, 1401, 5) }],
    });
    expect(await contentsOfXlsx(await written(plan))).toEqual(contentsOfPlan(plan));
    // The same handed over in blocks, as a workbook is that is read in slices.
    const [below, table, above] = plan.sheets[0]!.blocks as [Block, Block, Block];
    const parts = [0, 600, 1200].map((from) => ({
      row: table.row + from,
      column: table.column,
      cells: table.cells.slice(from, from + 600),
    }));
    const inBlocks = { ...plan, sheets: [{ ...plan.sheets[0]!, blocks: [above, ...parts, below] }] };
    expect(await contentsOfXlsx(await written(inBlocks))).toEqual(contentsOfPlan(plan));
  });

  test("tells how much of its long tables is packed", async () => {
    const cells = Array.from({ length: 5000 }, (_, i): CellValue[] => [i, `shot ${i}`]);
    const shares: number[] = [];
    await writeXlsx(planOfCells(cells), (share) => shares.push(share));
    expect(shares.length).toBeGreaterThan(10);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    shares.length = 0;
    await writeXlsx(planOfCells([["short"]]), (share) => shares.push(share));
    expect(shares).toEqual([]);
  });

  test("makes no formula of text, and marks text that an edit would turn into one", async () => {
    const bytes = await written(planOfCells(AWKWARD_TEXTS.map((text) => [text])));
    const sheet = part(bytes, "xl/worksheets/sheet1.xml");
    expect(sheet).not.toContain("<f>");
    expect(sheet).not.toContain('t="e"');
    const kept = part(bytes, "xl/styles.xml").split("<cellXfs")[1]!.split("<xf ").slice(1);
    const quoted = kept.findIndex((style) => style.includes('quotePrefix="1"'));
    for (const place of ["A1", "A2", "A3", "A4", "A9", "A10"]) {
      expect(sheet).toMatch(new RegExp(`<c r="${place}"[^>]* s="${quoted}"`));
    }
    expect(sheet).toMatch(/<c r="A5" t="s"><v>/);
  });

  test("gives back any text as it was, control characters and escapes included", async () => {
    const character = fc.oneof(
      fc.string({ unit: "binary", maxLength: 6 }),
      fc.constantFrom(
        "_x0041_",
        "_x005F_",
        "_",
        "x000D_",
        "\r",
        "\u0000",
        "\uFFFE",
        "\uFFFF",
        "&amp;",
        "]]>",
        " ",
      ),
    );
    const text = fc.array(character, { maxLength: 6 }).map((pieces) => pieces.join(""));
    const texts = fc.sample(text, { numRuns: 3000, seed: 7 }).filter((one) => one !== "");
    // A long block and a short one are written in two ways.
    for (const some of [texts, texts.slice(0, 400)]) {
      const bytes = await written(planOfCells(some.map((one) => [one])));
      const { sheets } = await readXlsx(bytes);
      expect(sheets[0]!.rows.map((row) => row[0])).toEqual(some);
      expect(part(bytes, "xl/sharedStrings.xml")).not.toMatch(FORBIDDEN);
      expect(part(bytes, "xl/worksheets/sheet1.xml")).not.toMatch(FORBIDDEN);
    }
  });

  test("keeps every bit of a number", async () => {
    const numbers = [0.1 + 0.2, 1 / 3, 5e-324, Number.MAX_VALUE, -1e-7, 123456789012345.67];
    const { sheets } = await readXlsx(await written(planOfCells([numbers])));
    expect(sheets[0]!.rows[0]).toEqual(numbers);
  });

  test("quotes the sheet's name in the area and the rows to print", async () => {
    const workbook = part(await written(samplePlan()), "xl/workbook.xml");
    expect(workbook).toContain(">'Player''s comparison'!$A$1:$L$52</definedName>");
    expect(workbook).toContain(">'Player''s comparison'!$1:$2</definedName>");
  });

  test("draws no lines between points, and straight ones where it draws them", async () => {
    const chart = part(await written(samplePlan()), "xl/charts/chart1.xml");
    expect(chart.match(/<a:noFill\/>/g)).toHaveLength(3);
    expect(chart.match(/<c:smooth val="0"\/>/g)).toHaveLength(6);
  });
});
