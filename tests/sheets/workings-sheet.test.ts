import quantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, it } from "vitest";
import type { CellValue } from "../../src/sheets/plan.ts";
import { workingsSheet } from "../../src/sheets/workings-sheet.ts";
import { cellAt } from "./cell-at.ts";
import { stylesAlong, widthAt } from "./looks-at.ts";
import { rowAt, shownAt } from "./row-at.ts";
import { smallParts, smallSession, withFigures } from "./small-session.ts";

const { session, comparison, shots, layout } = smallParts();
const sheet = workingsSheet(session, comparison, shots, layout).plan();
const values = (row: number) =>
  rowAt(sheet, row, 0, 14).map((cell) => (typeof cell === "object" && cell !== null ? cell.value : cell));
const formulas = (row: number) =>
  rowAt(sheet, row, 0, 14).map((cell) => (typeof cell === "object" && cell !== null ? cell.formula : cell));
const close = (value: number): unknown => expect.closeTo(value, 9);
/** Two-sided 95 %, by another library. */
const t = (df: number) => quantile(0.975, df);

describe("workingsSheet(session, comparison, shots, layout)", () => {
  it("has a row for each build and metric, build by build", () => {
    expect(Array.from({ length: 10 }, (_, i) => rowAt(sheet, 2 + i, 0, 2))).toEqual([
      ...["A", "B", "C"].flatMap((build) =>
        ["Launch angle", "Carry", "Offline"].map((metric) => [build, metric]),
      ),
      [null, null],
    ]);
  });

  it("works out count, mean, spread and limits of the baseline, and leaves its differences empty", () => {
    // By hand: 150, 152, 154 yd.
    const half = t(2) * Math.sqrt(4 / 3);
    expect(values(3)).toEqual([
      ...["A", "Carry", 3, close(152), close(2), close(4 / 3), close(t(2))],
      ...[close(152 - half), close(152 + half), null, null, null, null, null],
    ]);
    const mine = "('Shots'!$B$5:$B$12=$A$4)*('Shots'!$A$5:$A$12=TRUE)*ISNUMBER('Shots'!$D$5:$D$12)";
    expect(formulas(3).slice(2, 9)).toEqual([
      `SUMPRODUCT(${mine})`,
      `IF($C$4>0,SUMPRODUCT(${mine},'Shots'!$D$5:$D$12)/$C$4,"")`,
      `IF($C$4>1,SQRT(SUMPRODUCT(${mine}*('Shots'!$D$5:$D$12-$D$4)^2)/($C$4-1)),"")`,
      'IF(ISNUMBER($E$4),$E$4^2/$C$4,"")',
      'IF(ISNUMBER($E$4),SQRT(($C$4-1)*(1/BETAINV(0.05,($C$4-1)/2,0.5)-1)),"")',
      'IF(ISNUMBER($E$4),$D$4-$G$4*SQRT($F$4),"")',
      'IF(ISNUMBER($E$4),$D$4+$G$4*SQRT($F$4),"")',
    ]);
  });

  it("works out how far another build lies from it by Welch's method", () => {
    // By hand: means 163 and 152, variances of the means 9 / 3 and 4 / 3; Welch (1947) for the degrees of freedom.
    const [va, vb] = [3, 4 / 3];
    const df = (va + vb) ** 2 / (va ** 2 / 2 + vb ** 2 / 2);
    const half = t(df) * Math.sqrt(va + vb);
    expect(values(6).slice(0, 6)).toEqual(["B", "Carry", 3, close(163), close(3), close(3)]);
    expect(values(6).slice(9)).toEqual([
      close(11),
      close(df),
      close(t(df)),
      close(11 - half),
      close(11 + half),
    ]);
    expect(formulas(6).slice(9)).toEqual([
      'IF(AND(ISNUMBER($D$7),ISNUMBER($D$4)),$D$7-$D$4,"")',
      'IF(AND(ISNUMBER($F$7),ISNUMBER($F$4)),IF($F$7+$F$4>0,($F$7+$F$4)^2/($F$7^2/($C$7-1)+$F$4^2/($C$4-1)),""),"")',
      'IF(ISNUMBER($K$7),SQRT($K$7*(1/BETAINV(0.05,$K$7/2,0.5)-1)),"")',
      'IF(ISNUMBER($K$7),$J$7-$L$7*SQRT($F$7+$F$4),"")',
      'IF(ISNUMBER($K$7),$J$7+$L$7*SQRT($F$7+$F$4),"")',
    ]);
  });

  it("leaves out what was not measured, and shows no limits for a build hit once", () => {
    expect(values(5).slice(0, 5)).toEqual(["B", "Launch angle", 2, close(15), close(Math.SQRT2)]);
    expect(values(9)).toEqual(["C", "Carry", 1, 140, "", "", "", "", "", close(-12), "", "", "", ""]);
  });

  it("shows nothing but a count of 0 for a build of which a figure was never measured", () => {
    const lacking = withFigures(smallSession(), "launch", [
      18,
      Number.NaN,
      20,
      Number.NaN,
      22,
      Number.NaN,
      30,
      15,
    ]);
    const parts = smallParts(lacking);
    const bare = workingsSheet(lacking, parts.comparison, parts.shots, parts.layout).plan();
    expect(Array.from({ length: 14 }, (_, column) => shownAt(bare, 5, column))).toEqual([
      ...["B", "Launch angle", 0, "", "", "", "", "", "", "", "", "", "", ""],
    ]);
  });

  it("has a heading over each column, stays in view beside it, and is out of sight", () => {
    expect(String(cellAt(sheet, 0, 0))).toContain("Nothing here needs to be typed");
    expect(rowAt(sheet, 1, 0, 15)).toEqual([
      ...[
        "Build",
        "Metric",
        "n",
        "Mean",
        "SD",
        "Variance of the mean",
        "t for n - 1",
        "Low 95 %",
        "High 95 %",
      ],
      ...["Difference", "Welch df", "t for Welch", "Difference low", "Difference high", null],
    ] satisfies CellValue[]);
    expect(stylesAlong(sheet, 1, 15)).toEqual([...Array(14).fill("headingCentre"), undefined]);
    expect(stylesAlong(sheet, 10, 15)).toEqual([...Array(14).fill("plain"), undefined]);
    expect(sheet.frozen).toEqual({ rows: 2, columns: 2 });
    expect([0, 1, 13, 14].map((column) => widthAt(sheet, column))).toEqual([24, 14, 14, undefined]);
    expect(sheet.hidden).toBe(true);
  });
});

it("workingsLayout(session, shots, name) says where each figure stands, from inside and from other sheets", () => {
  expect(layout.local("B", "offline", "SD")).toBe("$E$8");
  expect(layout.cell("B", "offline", "SD")).toBe("'Workings'!$E$8");
  expect(layout.all("n")).toBe("'Workings'!$C$3:$C$11");
  expect(layout.buildCell("C")).toBe("'Workings'!$A$9");
  expect([layout.sheet, layout.first, layout.end]).toEqual(["Workings", 2, 11]);
});
