import { mean, sampleCovariance, sampleVariance } from "simple-statistics";
import { expect, it } from "vitest";
import { buildPairs } from "../../src/fitting/build-values.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import type { FormulaCell, SheetArea } from "../../src/sheets/plan.ts";
import { demoSession } from "./demo-session.ts";

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
