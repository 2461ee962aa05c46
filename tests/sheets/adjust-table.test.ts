import { describe, expect, it } from "vitest";
import { ADJUST_COLUMNS, putAdjust } from "../../src/sheets/adjust-table.ts";
import type { BenchJob } from "../../src/sheets/bench-job.ts";
import { cellAt } from "./cell-at.ts";
import { formatsAlong, heightAt, mergedAt, stylesAlong } from "./looks-at.ts";
import { formulaAt, rowAt } from "./row-at.ts";
import { beyondModel, smallBench, smallJob, TWO_IRONS, withFirst } from "./small-bench.ts";

function table(of?: BenchJob) {
  const { job, draft, layout } = smallBench(of);
  putAdjust(draft, job, layout);
  return draft.plan();
}
/** A set of so many irons. */
const irons = (count: number) =>
  smallJob(
    `target; swingweight; D2\nshafts; 105\ngrip; 50\nclub; length\n${Array.from({ length: count }, (_, i) => `${i + 1}; 37`).join("\n")}\n`,
  );

describe("putAdjust(draft, job, layout)", () => {
  const sheet = table();

  it("has a heading over each column and a row a club", () => {
    expect(rowAt(sheet, 11, 0, 6)).toEqual([
      ...["To adjust", "Head, g a point", "Butt, g a point", "Add at head, g", "or at butt, g"],
      "What to do, in this order",
    ]);
    expect(mergedAt(sheet, 11, 5)).toEqual([1, 7]);
    expect(stylesAlong(sheet, 11, 13)).toEqual([...Array(12).fill("headingCentre"), undefined]);
    expect(ADJUST_COLUMNS).toBe(12);
    expect([cellAt(sheet, 12, 0), cellAt(sheet, 13, 0), cellAt(sheet, 14, 0)]).toEqual(["7", "8", null]);
    for (const row of [12, 13]) {
      expect(mergedAt(sheet, row, 5)).toEqual([1, 7]);
      expect(stylesAlong(sheet, row, 13)).toEqual([
        ...["label", ...Array(4).fill("figure"), ...Array(7).fill("small")],
        undefined,
      ]);
      expect(formatsAlong(sheet, row, 6)).toEqual([
        ...[undefined, "+0.00;-0.00;0.00", "+0.00;-0.00;0.00", "+0.0;-0.0;0.0", "+0.0;-0.0;0.0"],
        undefined,
      ]);
    }
  });

  it("says what a point takes: at the club's end, and at its butt, 14 inches from the fulcrum", () => {
    // By arithmetic: 1.75 inch-ounces over the arm.
    const point = 1.75 * 28.349523125;
    expect(rowAt(sheet, 12, 1, 2)).toEqual([
      expect.closeTo(point / (37 - 14), 9),
      expect.closeTo(-point / 14, 9),
    ]);
    expect(cellAt(sheet, 13, 1)).toBeCloseTo(point / (36.5 - 14), 9);
    expect(rowAt(table(beyondModel(smallJob())), 12, 1, 2)).toEqual([null, expect.closeTo(-point / 14, 9)]);
  });

  it("gives the grams that bring the swingweight home once length is right, at the butt only where it is too heavy", () => {
    expect([3, 4].map((column) => formulaAt(sheet, 13, column))).toEqual([
      'IF(AND($M10="adjust",$I10<>"adjust",ISNUMBER($B14)),-$L10*$B14,"")',
      'IF(AND($M10="adjust",$I10<>"adjust"),IF($L10>0,-$L10*$C14,""),"")',
    ]);
    expect(rowAt(sheet, 13, 3, 2)).toMatchObject([{ value: "" }, { value: "" }]);
  });

  it("says in one line what to do where a mark says adjust, length first, and counts what passes", () => {
    const formula = formulaAt(sheet, 13, 5);
    const asks = (mark: string, off: string, over: string, under: string) =>
      `IF($${mark}10="adjust",IF($${off}10>0,${over},${under}),"")`;
    const by = (cell: string, digits: number) => `"~"&ROUND(ABS($${cell}),${digits})&"~"`;
    const both = (cell: string, digits: number) => [by(cell, digits), by(cell, digits)] as const;
    const words = formula.replace(/"([^"]*)"/g, (quoted, text: string) =>
      ["", "adjust", "pass"].includes(text) ? quoted : '"~"',
    );
    // Rules of Golf, Equipment Rules, Part 2, Section 1c: 18 and 48 inches.
    expect(words).toBe(
      [
        'IF(ISNUMBER($G10),IF(OR($G10<18,$G10>48),"~",""),"")',
        asks("I", "H", ...both("H10", 3)),
        asks("E", "D", ...both("D10", 1)),
        `IF($I10="adjust",IF($M10="","","~"),${asks("M", "L", `"~"&ROUND(ABS($D14),1)&"~"&ROUND(ABS($E14),1)&"~"`, by("D14", 1))})`,
        asks("U", "T", ...both("T10", 2)),
        asks("Y", "X", ...both("X10", 2)),
        asks("Q", "P", ...both("P10", 1)),
        'IF((COUNTIF($B$10:$Y$10,"pass")+COUNTIF($B$10:$Y$10,"adjust"))=0,"",COUNTIF($B$10:$Y$10,"pass")&"~"&(COUNTIF($B$10:$Y$10,"pass")+COUNTIF($B$10:$Y$10,"adjust"))&"~")',
      ].join("&"),
    );
    const said = [
      "Rules",
      "Cut",
      "Extend",
      "lighter",
      "heavier",
      "off the head",
      "Add",
      "stronger",
      "weaker",
    ];
    const places = [...said, "flatter", "upright", "over", "under"].map((word) => formula.lastIndexOf(word));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
    expect(cellAt(sheet, 13, 5)).toMatchObject({ value: "" });
  });

  it("speaks of frequency only where the set file tells what a club should show", () => {
    const told = `target; swingweight; D2\nshafts; 105\ngrip; 50\nclub; length; frequency\n7; 37; 300\n8; 36.5; 305\n`;
    // The seventh figure of the check: target, measured, difference and mark in Z to AC.
    expect(formulaAt(table(smallJob(told)), 13, 5)).toContain(
      'IF($AC10="adjust",IF($AB10>0,"Plays "&ROUND(ABS($AB10),0)&" cpm stiff: check the shaft and its tip trim. "',
    );
    expect(formulaAt(table(smallJob(told)), 13, 5)).toContain('COUNTIF($B$10:$AC$10,"pass")');
    expect(formulaAt(sheet, 13, 5)).not.toContain("cpm");
  });

  it("asks for no bend past the limit that was entered", () => {
    const limited = formulaAt(table(smallJob(`bend limit; 1.5\n${TWO_IRONS}`)), 13, 5);
    for (const [cell, name] of [
      ["T", "Loft"],
      ["X", "Lie"],
    ])
      expect(limited).toContain(
        `IF(ROUND(ABS($${cell}10),2)>1.5,"${name} is past the bend limit: ask the maker. ","Bend "`,
      );
    expect(formulaAt(sheet, 13, 5)).not.toContain("bend limit");
  });

  it("lets a putter be as long as it likes", () => {
    const putter = table(withFirst(smallJob(), { putter: true }));
    expect(formulaAt(putter, 12, 5)).toContain("OR($G9<18,$G9>1000)");
    expect(formulaAt(putter, 13, 5)).toContain("OR($G10<18,$G10>48)");
  });

  it("draws rows closer from the tenth club on, to keep the print large", () => {
    expect([11, 12, 13, 14].map((row) => heightAt(sheet, row))).toEqual([46, 30, 30, undefined]);
    const { layout } = smallBench(irons(9));
    expect(heightAt(table(irons(9)), layout.adjustClubs)).toBe(30);
    expect(heightAt(table(irons(10)), smallBench(irons(10)).layout.adjustClubs)).toBe(22);
  });
});
