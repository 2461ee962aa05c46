import { describe, expect, it } from "vitest";
import { putCheck } from "../../src/sheets/check-table.ts";
import { pointsFormula } from "../../src/sheets/swingweight-formula.ts";
import { cellAt } from "./cell-at.ts";
import { formatsAlong, heightAt, mergedAt, stylesAlong } from "./looks-at.ts";
import { formulaAt, rowAt, shownAt } from "./row-at.ts";
import { smallBench, smallJob } from "./small-bench.ts";

function table(of = smallJob()) {
  const { job, draft, layout } = smallBench(of);
  putCheck(draft, job, layout);
  return draft.plan();
}

describe("putCheck(draft, job, layout)", () => {
  const sheet = table();
  const firsts = [1, 5, 9, 13, 17, 21];

  it("has four columns for each figure and a row a club", () => {
    expect([[6], [7], [8], [9], [10]].map(([row]) => cellAt(sheet, row!, 0))).toEqual([
      ...["Check", null, "7", "8", null],
    ]);
    for (const { cells } of sheet.blocks) expect(new Set(cells.map((line) => line.length)).size).toBe(1);
    expect(firsts.map((column) => cellAt(sheet, 6, column))).toEqual([
      ...["Raw shaft, g", "Length, in", "Swingweight, points", "Total weight, g", "Loft, °", "Lie, °"],
    ]);
    for (const column of firsts) {
      expect(mergedAt(sheet, 6, column)).toEqual([1, 4]);
      expect(rowAt(sheet, 7, column, 4)).toEqual(["Target", "Measured", "Differ-ence", "Mark"]);
    }
    for (const row of [6, 7])
      expect(stylesAlong(sheet, row, 26)).toEqual([...Array(25).fill("headingCentre"), undefined]);
    for (const row of [8, 9]) {
      expect(stylesAlong(sheet, row, 26)).toEqual([
        ...["label", ...Array(6).fill(["figure", "input", "figure", "figureStrong"]).flat()],
        undefined,
      ]);
    }
    const formats = (shown: string, off: string) => [shown, shown, off, undefined];
    expect(formatsAlong(sheet, 9, 26)).toEqual([
      undefined,
      ...formats("0.0", "+0.0;-0.0;0.0"),
      ...formats("0.00##", "+0.00##;-0.00##;0.00"),
      ...formats("General", "+0.0;-0.0;0.0"),
      ...formats("0.0", "+0.0;-0.0;0.0"),
      ...formats("0.0#", "+0.0#;-0.0#;0.0"),
      ...formats("0.0#", "+0.0#;-0.0#;0.0"),
      undefined,
    ]);
    expect([5, 6, 7, 8, 9, 10].map((row) => heightAt(sheet, row))).toEqual([
      ...[undefined, 18, 32, 20, 20, undefined],
    ]);
  });

  it("takes each target from its own column of the plan and of the club's own row", () => {
    const { layout } = smallBench();
    const headings = layout.planColumns.map(({ heading }) => heading);
    const asked = ["Raw shaft (g)", "Length (in)", "Swing-weight", "Total weight (g)", "Loft (°)", "Lie (°)"];
    // The second club stands in the sheet's fifth row; the table begins in column B.
    const letters = asked.map((heading) => String.fromCharCode(66 + headings.indexOf(heading)));
    expect(firsts.map((column) => formulaAt(sheet, 9, column))).toEqual(
      letters.map((letter) => `$${letter}5`),
    );
    expect([1, 5, 9, 17, 21].map((column) => shownAt(sheet, 9, column))).toEqual([
      105,
      36.5,
      "D2.0",
      37,
      62.5,
    ]);
  });

  it("leaves the measured cell empty, and works out difference and mark from it", () => {
    expect(cellAt(sheet, 9, 6)).toBeNull();
    expect([formulaAt(sheet, 9, 7), formulaAt(sheet, 9, 8)]).toEqual([
      'IF(ISNUMBER($G10),IF(ISNUMBER($F10),$G10-$F10,""),IF($G10="","","number?"))',
      'IF(AND(ISNUMBER($H10),ISNUMBER($H$1)),IF(ROUND(ABS($H10),6)<=$H$1,"pass","adjust"),"")',
    ]);
    expect(formulaAt(sheet, 9, 11)).toBe(
      `IF(OR($K10="",$J10=""),"",IFERROR(${pointsFormula("$K10")}-(${pointsFormula("$J10")}),"code?"))`,
    );
    expect([7, 8, 11, 12].map((column) => shownAt(sheet, 9, column))).toEqual(["", "", "", ""]);
  });

  it("has no target for what the set does not say", () => {
    const bare = table(
      smallJob("target; swingweight; D2\nshafts; 105\ngrip; 50\nclub; length\n7; 37\n8; 36.5\n"),
    );
    expect([17, 21].map((column) => cellAt(bare, 8, column))).toEqual([null, null]);
  });

  it("takes figures within reason where one measures, and a code where one reads the scale", () => {
    const most = [1000, 100, 5000, 90, 90];
    expect(sheet.validations).toEqual(
      [1, 5, 13, 17, 21].map((column, i) => ({
        area: { row: 8, column: column + 1, rows: 2, columns: 1 },
        kind: "number",
        least: 0,
        most: most[i],
        message: expect.stringMatching(/ as measured: a number/),
      })),
    );
    expect(sheet.notes).toEqual([{ row: 7, column: 10, text: expect.stringContaining("D2 or D2.3") }]);
  });

  it("colours each mark by its own cell", () => {
    expect(sheet.conditions.slice(2, 4)).toEqual([
      { area: { row: 8, column: 8, rows: 2, columns: 1 }, formula: '$I9="pass"', style: "good" },
      { area: { row: 8, column: 8, rows: 2, columns: 1 }, formula: '$I9="adjust"', style: "bad" },
    ]);
  });
});
