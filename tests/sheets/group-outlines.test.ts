import { mean, sampleCovariance, sampleVariance } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { buildPairs } from "../../src/fitting/build-values.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { putGroupOutlines } from "../../src/sheets/group-outlines.ts";
import { BUILD_COLORS } from "../../src/sheets/palette.ts";
import type { FormulaCell, SheetArea } from "../../src/sheets/plan.ts";
import { sessionOfShots } from "../fitting/session-of-shots.ts";
import { demoSession } from "./demo-session.ts";
import { styleAt } from "./looks-at.ts";
import { formulaAt, rowAt, shownAt } from "./row-at.ts";
import { smallParts, smallSession, withFigures } from "./small-session.ts";

// A standard chi-square table: 5.9915 for two degrees of freedom and 95 %.
const CHI_SQUARE = 5.9915;

it("draws each build's outline where the squared Mahalanobis distance from its middle is the chi-square of 95 %", () => {
  const session = demoSession();
  const { sheets } = comparisonWorkbook(session, NOTHING_TAKEN, "now");
  const workings = sheets.find(({ name }) => name === "Workings")!;
  const figures = ({ area }: SheetArea) =>
    workings.blocks
      .filter(
        ({ row, column, cells }) =>
          row === area.row && column <= area.column && column + cells[0]!.length > area.column,
      )
      .flatMap(({ column, cells }) =>
        cells.map((row) => (row[area.column - column] as FormulaCell).value as number),
      );
  const chart = sheets.flatMap(({ charts }) => charts).find(({ name }) => name === "Where the shots landed")!;
  const outlines = chart.series.filter(({ unlisted }) => unlisted);
  expect(outlines).toHaveLength(session.builds.length);
  outlines.forEach((outline, b) => {
    const { x, y } = buildPairs(session.table, session.builds[b]!.name, "offline", "carry");
    const [vx, vy, cxy] = [sampleVariance(x), sampleVariance(y), sampleCovariance(x, y)];
    const [across, up] = [figures(outline.x), figures(outline.y)];
    expect(across.length).toBeGreaterThan(12);
    across.forEach((offline, i) => {
      const [dx, dy] = [offline - mean(x), up[i]! - mean(y)];
      const distance = (vy * dx * dx - 2 * cxy * dx * dy + vx * dy * dy) / (vx * vy - cxy * cxy);
      expect(distance).toBeCloseTo(CHI_SQUARE, 3);
    });
  });
});

/** Spreads from the middle to the outline: the quantile of chi-square with two degrees of freedom is -2 ln(1 - p). */
const SPREADS = Math.sqrt(-2 * Math.log(0.05));

function outlines(of?: Parameters<typeof smallParts>[0]) {
  const { workings, session, comparison, shots, layout } = smallParts(of);
  const found = putGroupOutlines(workings, session, comparison, shots, layout);
  return { found, sheet: workings.plan() };
}

describe("putGroupOutlines(workings, session, comparison, shots, layout)", () => {
  const { found, sheet } = outlines();

  it("has three columns for each build: 33 points, of which the last is the first, and their correlation", () => {
    expect(rowAt(sheet, 1, 58, 9)).toEqual([
      ...[
        "A: outline",
        null,
        "Correlation",
        "B: outline",
        null,
        "Correlation",
        "C: outline",
        null,
        "Correlation",
      ],
    ]);
    expect([
      styleAt(sheet, 1, 63),
      styleAt(sheet, 2, 62),
      styleAt(sheet, 34, 62),
      styleAt(sheet, 35, 62),
    ]).toEqual([...["headingCentre", "plain", "plain", undefined]]);
    const points = Array.from({ length: 33 }, (_, i) => [
      shownAt(sheet, 2 + i, 61),
      shownAt(sheet, 2 + i, 62),
    ]);
    expect(points[32]).toEqual(points[0]);
    expect(new Set(points.map(String)).size).toBe(32);
    expect(rowAt(sheet, 35, 58, 9)).toEqual(Array(9).fill(null));
  });

  it("works the correlation of the kept shots out, which is none for a build of fewer than three", () => {
    // By hand: B's offlines 2, 4, 9 and carries 160, 163, 166: 21 / 2 over root 13 and 3. A lies on one line.
    const r = 10.5 / Math.sqrt(13) / 3;
    expect([60, 63, 66].map((column) => shownAt(sheet, 2, column))).toEqual([
      ...[expect.closeTo(1, 9), expect.closeTo(r, 9), ""],
    ]);
    const both =
      "('Shots'!$B$5:$B$12=$A$7)*('Shots'!$A$5:$A$12=TRUE)*ISNUMBER('Shots'!$E$5:$E$12)*ISNUMBER('Shots'!$D$5:$D$12)";
    expect(formulaAt(sheet, 2, 63)).toBe(
      `IF(SUMPRODUCT(${both})>2,IFERROR(MAX(-1,MIN(1,SUMPRODUCT(${both}*('Shots'!$E$5:$E$12-$D$8)*('Shots'!$D$5:$D$12-$D$7))/(SUMPRODUCT(${both})-1)/$E$8/$E$7)),""),"")`,
    );
  });

  it("stands its points around the middle, and all on it where there is no correlation", () => {
    // By hand at the angles 0 and 90 degrees: 5 + s root 13 and 163 + 3 s r; 5 and 163 + 3 s root (1 - r2).
    const r = 10.5 / Math.sqrt(13) / 3;
    const at = (row: number, column: number) => [
      shownAt(sheet, row, column),
      shownAt(sheet, row, column + 1),
    ];
    const close = (value: number): unknown => expect.closeTo(value, 9);
    expect(at(2, 61)).toEqual([close(5 + SPREADS * Math.sqrt(13)), close(163 + 3 * SPREADS * r)]);
    expect(at(10, 61)).toEqual([close(5), close(163 + 3 * SPREADS * Math.sqrt(1 - r * r))]);
    expect([at(2, 64), at(10, 64)]).toEqual([
      [1, 140],
      [1, 140],
    ]);
    const [across, up] = [formulaAt(sheet, 2, 61), formulaAt(sheet, 2, 62)].map((text) =>
      text.replace(/2\.4477\d+/g, "s"),
    );
    expect(across).toBe("IF(ISNUMBER($BL$3),$D$8+(s)*$E$8,N($D$8))");
    expect(up).toBe("IF(ISNUMBER($BL$3),$D$7+$E$7*($BL$3*(s)+SQRT(1-$BL$3^2)*(0)),N($D$7))");
  });

  it("answers a line for each build, and every point for the axes", () => {
    const places = (column: number) => ({
      sheet: "Workings",
      area: { row: 2, column, rows: 33, columns: 1 },
    });
    expect(found.series).toEqual(
      [0, 1, 2].map((b) => ({
        name: expect.stringMatching(new RegExp(`^${["A", "B", "C"][b]}: 95 %`)),
        x: places(58 + 3 * b),
        y: places(59 + 3 * b),
        color: BUILD_COLORS[b],
        ...{ marker: "none", markerSize: 2, line: "solid", unlisted: true },
      })),
    );
    expect([found.offline.length, found.carry.length]).toEqual([99, 99]);
    expect(Math.max(...found.offline)).toBeCloseTo(5 + SPREADS * Math.sqrt(13), 9);
    expect(found.carry).toContain(140);
  });

  it("stands all points on the mean of a build of two shots, and on 0 where a figure was never measured", () => {
    const pairs = ({ sheet: drawn }: ReturnType<typeof outlines>, column: number) =>
      [2, 6, 13].map((row) => [shownAt(drawn, row, column), shownAt(drawn, row, column + 1)]);
    const two = outlines(
      sessionOfShots({
        A: [
          [150, -2],
          [154, 4],
        ],
      }),
    );
    expect(pairs(two, 16 + 6 + 24)).toEqual(Array(3).fill([1, 152]));
    const never = [-3, Number.NaN, 0, Number.NaN, 3, Number.NaN, 40, 1];
    expect(pairs(outlines(withFigures(smallSession(), "offline", never)), 61)).toEqual(
      Array(3).fill([0, expect.closeTo(163, 9)]),
    );
    expect(pairs(outlines(withFigures(smallSession(), "carry", never)), 61)).toEqual(
      Array(3).fill([expect.closeTo(5, 9), 0]),
    );
  });

  it("takes each figure's spread from all its shots, and never goes beyond plus or minus 1", () => {
    const r = (shots: readonly (number | readonly [number, number])[]) =>
      shownAt(outlines(sessionOfShots({ A: shots })).sheet, 2, 16 + 6 + 24 + 2);
    // By hand: carries 150, 152, 154, 160 have a spread of root 56 / 3 about 154; products -3 x -4 + 3 x 0 over 2.
    expect(r([[150, -3], [152, 0], [154, 3], 160])).toBeCloseTo(6 / 3 / Math.sqrt(56 / 3), 9);
    // By hand: offlines -2, 1, 4, 7 and carries 150, 152, 154, 160, of which three make a pair: 21 / 2 over both spreads.
    const mixed = sessionOfShots({
      A: [
        [150, 1],
        [151, 1],
        [152, 1],
        [153, 1],
        [154, 1],
      ],
    });
    const carried = withFigures(mixed, "carry", [150, 152, 154, 160, Number.NaN]);
    const both = withFigures(carried, "offline", [-2, 1, 4, Number.NaN, 7]);
    expect(shownAt(outlines(both).sheet, 2, 48)).toBeCloseTo(10.5 / Math.sqrt(15) / Math.sqrt(56 / 3), 9);
    // By hand: with six more carries of 152 their spread is 1, so that 12 / 2 / 3 / 1 is 2.
    const middle = [152, 152, 152, 152, 152, 152];
    expect(r([[150, -3], [152, 0], [154, 3], ...middle])).toBe(1);
    expect(r([[150, 3], [152, 0], [154, -3], ...middle])).toBe(-1);
    expect(r([[150, -3], [154, 3], ...middle])).toBe("");
    expect(
      r([
        [150, 3],
        [150, 0],
        [150, -3],
      ]),
    ).toBe("");
  });
});
