import { describe, expect, test } from "vitest";
import type { Session } from "../../src/fitting/session.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import type { Area, SheetPlan } from "../../src/sheets/plan.ts";
import { without } from "../fitting/simulated-flights.ts";
import { cellAt, findText } from "./cell-at.ts";
import { demoSession } from "./demo-session.ts";

const NAME = "Mean flights from the side";
const TITLE = "Carry in the same air, at the same club speed";

function sheetsOf(session: Session): { comparison: SheetPlan; workings: SheetPlan } {
  const { sheets } = comparisonWorkbook(session, NOTHING_TAKEN, "2026-11-25 10:00 UTC");
  const named = (name: string) => sheets.find((sheet) => sheet.name === name)!;
  return { comparison: named("Comparison"), workings: named("Workings") };
}

function figures(sheet: SheetPlan, { row, column, rows }: Area): number[] {
  return Array.from({ length: rows }, (_, i) => cellAt(sheet, row + i, column) as number);
}

describe("the side view on the Comparison sheet", () => {
  test("draws each build from the ball to its mean carry, through its mean height", () => {
    const { comparison, workings } = sheetsOf(demoSession());
    const chart = comparison.charts.find(({ name }) => name === NAME)!;
    const listed = chart.series.filter(({ unlisted }) => !unlisted);
    expect(listed.map(({ name }) => name)).toEqual(demoSession().builds.map(({ name }) => name));
    const second = chart.series.filter(({ unlisted }) => unlisted)[1];
    const [ahead, up] = [figures(workings, second!.x.area), figures(workings, second!.y.area)];
    // Means of the demo table's 105 g shots: 162.7 yd, 88.5 ft.
    expect([ahead[0], ahead.at(-1)]).toEqual([0, expect.closeTo(162.7, 9)]);
    expect(Math.max(...up)).toBeCloseTo(88.5, 0);
    expect(ahead).toEqual([...ahead].sort((a, b) => a - b));
    expect(chart.x.most).toBeGreaterThan(165);
    expect(chart.y.most).toBeGreaterThan(90);
  });

  test("marks each build's top and landing with a marker of its own, which the legend shows", () => {
    const { comparison, workings } = sheetsOf(demoSession());
    const chart = comparison.charts.find(({ name }) => name === NAME)!;
    const listed = chart.series.filter(({ unlisted }) => !unlisted);
    expect(new Set(listed.map(({ marker }) => marker)).size).toBe(4);
    const [ahead, up] = [figures(workings, listed[1]!.x.area), figures(workings, listed[1]!.y.area)];
    // Means of the demo table's 105 g shots: 162.7 yd, 88.5 ft.
    expect([ahead[1], up[1]]).toEqual([expect.closeTo(162.7, 9), 0]);
    expect(up[0]).toBeCloseTo(88.5, 0);
    expect(chart.alt).toContain("105 g mid-launch flies 89 ft high and 162.7 yd far.");
  });

  test("is in metres where the session is", () => {
    const { comparison, workings } = sheetsOf({ ...demoSession(), units: "metric" });
    const chart = comparison.charts.find(({ name }) => name === NAME)!;
    expect(figures(workings, chart.series[3]!.x.area).at(-1)).toBeCloseTo(162.7 * 0.9144, 9);
    expect(chart.x.title).toBe("Carry (m)");
  });

  test("keeps its figures clear of everything else on the Workings sheet", () => {
    const { workings } = sheetsOf(demoSession());
    const taken = new Set<string>();
    for (const { row, column, cells } of workings.blocks) {
      for (const [i, line] of cells.entries()) {
        for (const j of line.keys()) {
          const place = `${row + i},${column + j}`;
          expect(taken.has(place)).toBe(false);
          taken.add(place);
        }
      }
    }
  });

  test("is left out where no build can be flown, and so is the block of carries", () => {
    const { comparison } = sheetsOf(without(demoSession(), "spin"));
    expect(comparison.charts.some(({ name }) => name === NAME)).toBe(false);
    expect(() => findText(comparison, TITLE)).toThrow();
  });
});

describe("the block of carries in the same air", () => {
  test("gives each build's carry and its change against the baseline, with when it was worked out", () => {
    const { comparison } = sheetsOf(demoSession());
    const { row } = findText(comparison, TITLE);
    const label = (step: number) => cellAt(comparison, row + step, 0);
    expect([1, 2, 3, 4].map(label)).toEqual([
      "In standard air",
      "and at 83.3 mph",
      "and usual strike",
      "On a green",
    ]);
    // Air not stated: carries stay as measured. Means of the demo table: 162.7 and, of the baseline, 156.0833 yd.
    expect(cellAt(comparison, row + 1, 6)).toMatchObject({ value: expect.closeTo(162.7, 9) });
    expect(cellAt(comparison, row + 1, 8)).toMatchObject({ value: expect.closeTo(162.7 - 156.0833, 3) });
    expect(cellAt(comparison, row + 1, 16)).toBeNull();
    expect(cellAt(comparison, row + 4, 2)).toBe("holds");
    expect(cellAt(comparison, row + 5, 0)).toMatch(
      /worked out 2026-11-25 10:00 UTC.*drag \(.*corrections are ratios.*Air not stated/,
    );
  });

  test("leaves out the rows that need a club speed where there is none", () => {
    const { comparison } = sheetsOf(without(demoSession(), "clubSpeed", "height", "landingAngle"));
    const { row } = findText(comparison, TITLE);
    expect(cellAt(comparison, row + 2, 0)).toBe("On a green");
    expect(cellAt(comparison, row + 3, 0)).toContain(
      "Landing angle of 24 of 24 shots was computed, not measured",
    );
  });
});
