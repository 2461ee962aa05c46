import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { readXlsxText } from "../../../src/hosts/file/read-xlsx.ts";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx.ts";
import { isProblem } from "../../../src/outcome/problem.ts";
import { planOfCells } from "../../sheets/plan-of-cells.ts";
import { samplePlan } from "../../sheets/sample-plan.ts";

async function textOf(plan: ReturnType<typeof samplePlan>): Promise<string> {
  const bytes = await writeXlsx(plan);
  if (isProblem(bytes)) throw new Error(bytes.message);
  const text = await readXlsxText(bytes);
  if (isProblem(text)) throw new Error(text.message);
  return text;
}

describe("readXlsxText", () => {
  test("gives the cells of the first visible sheet, answers of formulas included", async () => {
    const { sheets, ...rest } = samplePlan();
    const text = await textOf({ ...rest, sheets: [sheets[2]!, sheets[1]!, sheets[0]!] });
    expect(text.split("\n")[1]).toBe('TRUE\tA 65 g\t251.2\t-3.2\t"=HYPERLINK(""x"")"');
    expect((await textOf(samplePlan())).split("\n")[5]).toMatch(/^A 65 g\t5\t250\.38/);
  });

  test("quotes what would break a row, so that a reader of tables gets the cells back", async () => {
    const cells = [
      ["Remark", "n"],
      ["two\nlines", "a\tb"],
      ['say "hi"', " x "],
    ];
    const { data } = Papa.parse(await textOf(planOfCells(cells)), { delimiter: "\t" });
    expect(data).toEqual(cells);
  });

  test("writes days and times as people who exchange data do", async () => {
    // Source of the day's number: ECMA-376 part 1, 18.17.4.1: 1900 system, 45292 is 2024-01-01.
    const plan = planOfCells([[45292, 45292.75]], {
      formats: [{ area: { row: 0, column: 0, rows: 1, columns: 2 }, format: "yyyy-mm-dd" }],
    });
    expect(await textOf(plan)).toBe("2024-01-01\t2024-01-01 18:00:00");
  });

  test("refuses what is no workbook, and a workbook without cells", async () => {
    expect(await readXlsxText(new TextEncoder().encode("Club\tCarry"))).toMatchObject({ kind: "invalid" });
    const empty = await writeXlsx(planOfCells([]));
    expect(await readXlsxText(empty as Uint8Array)).toMatchObject({
      kind: "invalid",
      message: expect.stringContaining("empty"),
    });
  });
});
