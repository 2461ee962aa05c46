import quantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, it } from "vitest";
import { putComparisonTable } from "../../src/sheets/comparison-table.ts";
import { cellAt } from "./cell-at.ts";
import { formatsAlong, heightAt, mergedAt, stylesAlong } from "./looks-at.ts";
import { formulaAt, rowAt, shownAt } from "./row-at.ts";
import { smallParts, smallSession, withFigures } from "./small-session.ts";

describe("putComparisonTable(draft, session, comparison, shots, workings, from)", () => {
  const { draft, session, comparison, shots, layout } = smallParts();
  const end = putComparisonTable(draft, session, comparison, shots, layout, 5);
  const sheet = draft.plan();
  const whole = (style: string) => [...Array(14).fill(style), undefined];

  it("names the builds over four columns each, and marks the baseline, which has no change", () => {
    expect([0, 2, 6, 10].map((column) => cellAt(sheet, 5, column))).toEqual([
      ...["Build by build", "A (baseline)", "B", "C"],
    ]);
    expect([0, 2, 6, 10].map((column) => mergedAt(sheet, 5, column))).toEqual([
      [1, 2],
      [1, 4],
      [1, 4],
      [1, 4],
    ]);
    expect(rowAt(sheet, 6, 0, 10)).toEqual([
      ...["Against the baseline", null, "Mean", "SD", null, null],
      ...["Mean", "SD", "Change", "± 95 %"],
    ]);
    expect(mergedAt(sheet, 6, 0)).toEqual([1, 2]);
    for (const row of [5, 6]) {
      expect(stylesAlong(sheet, row, 15)).toEqual([
        ...["headingLeft", "headingLeft"],
        ...Array(12).fill("headingCentre"),
        undefined,
      ]);
    }
    expect([heightAt(sheet, 5), heightAt(sheet, 6)]).toEqual([32, undefined]);
  });

  it("counts the shots of each build, kept and in all", () => {
    expect(cellAt(sheet, 7, 0)).toBe("Shots kept");
    expect([2, 3, 4, 5, 6, 7].map((column) => shownAt(sheet, 7, column))).toEqual([
      3,
      "of 4",
      null,
      null,
      3,
      "of 3",
    ]);
    expect(formulaAt(sheet, 7, 6)).toBe(
      "SUMPRODUCT(('Shots'!$B$5:$B$12='Workings'!$A$6)*('Shots'!$A$5:$A$12=TRUE))",
    );
    expect(formulaAt(sheet, 7, 7)).toBe("\"of \"&SUMPRODUCT(--('Shots'!$B$5:$B$12='Workings'!$A$6))");
    expect(stylesAlong(sheet, 7, 15)).toEqual(["label", "label", ...Array(12).fill("figure"), undefined]);
    expect(formatsAlong(sheet, 7, 15)).toEqual([undefined, undefined, ...Array(12).fill("0"), undefined]);
  });

  it("has a line over each group of metrics and a row for each metric", () => {
    expect(Array.from({ length: 7 }, (_, i) => rowAt(sheet, 8 + i, 0, 2))).toEqual([
      ["Launch: how the ball left", null],
      ["Launch angle", "°"],
      ["Flight", null],
      ["Carry", "yd"],
      ["Group: left and right", null],
      ["Offline", "yd"],
      [null, null],
    ]);
    for (const row of [8, 10, 12]) expect(stylesAlong(sheet, row, 15)).toEqual(whole("group"));
    for (const row of [9, 11, 13])
      expect(stylesAlong(sheet, row, 15)).toEqual(["label", "label", ...Array(12).fill("figure"), undefined]);
    expect(end).toBe(14);
  });

  it("reads means, spreads and changes from the workings, signed where they are changes", () => {
    expect(formulaAt(sheet, 11, 2)).toBe("'Workings'!$D$4");
    expect([6, 7, 8, 9].map((column) => formulaAt(sheet, 11, column))).toEqual([
      ...["'Workings'!$D$7", "'Workings'!$E$7", "'Workings'!$J$7"],
      "IF(ISNUMBER('Workings'!$N$7),'Workings'!$N$7-'Workings'!$J$7,\"\")",
    ]);
    expect([2, 3, 4, 5, 6, 7, 8].map((column) => shownAt(sheet, 11, column))).toEqual([
      ...[expect.closeTo(152, 9), expect.closeTo(2, 9), null, null],
      ...[expect.closeTo(163, 9), expect.closeTo(3, 9), expect.closeTo(11, 9)],
    ]);
    // By hand: variances of the means 9 / 3 and 4 / 3; Welch (1947) for the degrees of freedom, t by another library.
    const [va, vb] = [3, 4 / 3];
    const df = (va + vb) ** 2 / (va ** 2 / 2 + vb ** 2 / 2);
    expect(shownAt(sheet, 11, 9)).toBeCloseTo(quantile(0.975, df) * Math.sqrt(va + vb), 9);
    // A build hit once has a mean and a change, and neither spread nor limits.
    expect([10, 11, 12, 13].map((column) => shownAt(sheet, 11, column))).toEqual([
      ...[140, "", expect.closeTo(-12, 9), ""],
    ]);
    const build = ["0.0", "0.0", "+0.0;-0.0;0.0", "0.0"];
    expect(formatsAlong(sheet, 11, 15)).toEqual([
      undefined,
      undefined,
      ...build,
      ...build,
      ...build,
      undefined,
    ]);
  });

  it("leaves empty what was never measured of a build", () => {
    const lacking = smallParts(
      withFigures(smallSession(), "launch", [18, Number.NaN, 20, Number.NaN, 22, Number.NaN, 30, 15]),
    );
    putComparisonTable(lacking.draft, lacking.session, lacking.comparison, lacking.shots, lacking.layout, 5);
    const bare = lacking.draft.plan();
    expect([6, 7, 8, 9].map((column) => shownAt(bare, 9, column))).toEqual(["", "", "", ""]);
    expect(shownAt(bare, 9, 2)).toBeCloseTo(20, 9);
  });

  it("has one line over metrics of the same group", () => {
    const more = smallParts(
      withFigures(smallSession(), "spin", [6000, 6100, 6200, 6300, 6400, 6500, 6600, 6700]),
    );
    putComparisonTable(more.draft, more.session, more.comparison, more.shots, more.layout, 5);
    const plan = more.draft.plan();
    expect([8, 9, 10, 11].map((row) => cellAt(plan, row, 0))).toEqual([
      ...["Launch: how the ball left", "Launch angle", "Spin rate", "Flight"],
    ]);
  });

  it("shades a change that is larger than its limits, but for the baseline's columns", () => {
    expect(sheet.conditions).toEqual([
      {
        area: { row: 8, column: 8, rows: 6, columns: 2 },
        formula: "IF(AND(ISNUMBER($I9),ISNUMBER($J9)),ABS($I9)>$J9,FALSE)",
        style: "good",
      },
      {
        area: { row: 8, column: 12, rows: 6, columns: 2 },
        formula: "IF(AND(ISNUMBER($M9),ISNUMBER($N9)),ABS($M9)>$N9,FALSE)",
        style: "good",
      },
    ]);
  });
});
