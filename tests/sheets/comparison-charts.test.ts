import quantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, it } from "vitest";
import type { Session } from "../../src/fitting/session.ts";
import { putGroupChart, putLimitsChart } from "../../src/sheets/comparison-charts.ts";
import { BUILD_COLORS } from "../../src/sheets/palette.ts";
import { area } from "../../src/sheets/sheet-draft.ts";
import { sessionOfShots } from "../fitting/session-of-shots.ts";
import { without } from "../fitting/simulated-flights.ts";
import { cellAt } from "./cell-at.ts";
import { styleAt } from "./looks-at.ts";
import { formulaAt, rowAt, shownAt } from "./row-at.ts";
import { smallParts, smallSession, withFigures } from "./small-session.ts";

const WHERE = area(20, 4, 15, 6);

function group(of?: Session) {
  const { draft, workings, session, comparison, shots, layout } = smallParts(of);
  const drawn = putGroupChart(draft, workings, session, comparison, shots, layout, WHERE);
  return { drawn, chart: draft.plan().charts[0]!, workings: workings.plan() };
}

function limits(of?: Session) {
  const { draft, workings, session, comparison, layout } = smallParts(of);
  const drawn = putLimitsChart(draft, workings, session, comparison, layout, WHERE);
  return { drawn, chart: draft.plan().charts[0]!, workings: workings.plan() };
}
const workingsArea = (row: number, column: number, rows: number) => ({
  sheet: "Workings",
  area: area(row, column, rows),
});

describe("putGroupChart(...)", () => {
  const { drawn, chart, workings } = group();

  it("has two columns for each build and a row a shot, which is drawn on the mean where it does not count", () => {
    expect(drawn).toBe(true);
    expect(rowAt(workings, 1, 16, 6)).toEqual([
      ...["A: Offline", "A: Carry", "B: Offline", "B: Carry", "C: Offline", "C: Carry"],
    ]);
    const pairs = (column: number) =>
      Array.from({ length: 9 }, (_, i) => [
        shownAt(workings, 2 + i, column),
        shownAt(workings, 2 + i, column + 1),
      ]);
    // By hand: the means of A are 0 and 152, those of B 5 and 163; the seventh shot is unticked.
    const [a, b] = [
      [expect.closeTo(0, 9), expect.closeTo(152, 9)],
      [expect.closeTo(5, 9), expect.closeTo(163, 9)],
    ];
    expect(pairs(16)).toEqual([[-3, 150], a, [0, 152], a, [3, 154], a, a, a, [null, null]]);
    expect(pairs(18)).toEqual([b, [2, 160], b, [4, 163], b, [9, 166], b, b, [null, null]]);
    expect(pairs(20)[7]).toEqual([1, 140]);
    const mine = "AND('Shots'!$A$6=TRUE,'Shots'!$B$6=$A$7,ISNUMBER('Shots'!$E$6),ISNUMBER('Shots'!$D$6))";
    expect([formulaAt(workings, 3, 18), formulaAt(workings, 3, 19)]).toEqual([
      `IF(${mine},'Shots'!$E$6,N($D$8))`,
      `IF(${mine},'Shots'!$D$6,N($D$7))`,
    ]);
    expect([styleAt(workings, 1, 19), styleAt(workings, 2, 19), styleAt(workings, 9, 19)]).toEqual([
      ...["headingCentre", "plain", "plain"],
    ]);
  });

  it("draws a marker for each build, each with its own look, and its outline behind", () => {
    expect(chart).toMatchObject({
      name: "Where the shots landed",
      title: "Where the shots landed",
      alt: expect.stringContaining("3 builds"),
      area: WHERE,
      kind: "scatter",
      legend: true,
    });
    expect(chart.series).toHaveLength(6);
    expect(chart.series.slice(0, 3)).toEqual(
      (["circle", "square", "diamond"] as const).map((marker, b) => ({
        name: ["A", "B", "C"][b],
        x: workingsArea(2, 16 + 2 * b, 8),
        y: workingsArea(2, 17 + 2 * b, 8),
        color: BUILD_COLORS[b],
        ...{ marker, markerSize: 8, line: "none", unlisted: false },
      })),
    );
    expect(chart.series.slice(3).every(({ unlisted }) => unlisted)).toBe(true);
  });

  it("has axes on round figures just beyond the shots, even about the middle from left to right", () => {
    // By hand: offlines to 40 on the right, so -40 to 40 in steps of 10; carries from 100 to B's outline, 163 + 2.45 x 3.
    expect(chart.x).toEqual({ title: "Offline (yd): left is minus", format: "0", least: -50, most: 50 });
    expect(chart.y).toEqual({ title: "Carry (yd)", format: "0", least: 90, most: 180 });
    const left = group(
      sessionOfShots({
        A: [
          [150, -40],
          [151, 3],
          [152, 1],
        ],
      }),
    ).chart.x;
    expect(left.least).toBe(-(left.most ?? 0));
    expect(left.most).toBeGreaterThan(40);
  });

  it("draws a shot of which one figure is missing on the mean of both", () => {
    const { workings: drawnOn, chart: whole } = group(sessionOfShots({ A: [[150, 2], [152, 4], 160] }));
    expect([whole.x.least, whole.x.most].every(Number.isFinite)).toBe(true);
    // By hand: the mean offline is 3, the mean carry 154.
    expect([shownAt(drawnOn, 4, 16), shownAt(drawnOn, 4, 17)]).toEqual([3, 154]);
  });

  it("draws a build of which a figure was never measured at 0", () => {
    const never = [-3, Number.NaN, 0, Number.NaN, 3, Number.NaN, 40, 1];
    const { workings: drawnOn } = group(withFigures(smallSession(), "offline", never));
    expect([shownAt(drawnOn, 3, 18), shownAt(drawnOn, 3, 19)]).toEqual([0, expect.closeTo(163, 9)]);
  });

  it("draws no more than 2000 shots", () => {
    const shots = Array.from({ length: 2001 }, (_, i) => [150 + (i % 7), (i % 5) - 2] as const);
    const { chart: full, workings: long } = group(sessionOfShots({ A: shots }));
    expect(full.series[0]!.x.area.rows).toBe(2000);
    expect([shownAt(long, 2001, 17) !== null, cellAt(long, 2002, 17)]).toEqual([true, null]);
  });

  it("is left out where carry or offline was not measured", () => {
    for (const key of ["carry", "offline"]) {
      const {
        draft,
        workings: none,
        session,
        comparison,
        shots,
        layout,
      } = smallParts(without(smallSession(), key));
      expect(putGroupChart(draft, none, session, comparison, shots, layout, WHERE)).toBe(false);
      expect([draft.plan().charts, none.plan().blocks]).toEqual([[], []]);
    }
  });
});

describe("putLimitsChart(...)", () => {
  const { drawn, chart, workings } = limits();

  it("has three points for each build: lower limit, mean, upper limit, or its mean alone", () => {
    expect(drawn).toBe(true);
    expect(rowAt(workings, 1, 23, 2)).toEqual(["Place", "Carry limits"]);
    expect([styleAt(workings, 1, 23), styleAt(workings, 1, 24)]).toEqual(["headingCentre", "headingCentre"]);
    const shown = Array.from({ length: 10 }, (_, i) => [
      cellAt(workings, 2 + i, 23),
      shownAt(workings, 2 + i, 24),
    ]);
    // By hand: mean plus and minus t of two degrees of freedom times SD over root 3; t by another library.
    const half = (sd: number) => (quantile(0.975, 2) * sd) / Math.sqrt(3);
    const close = (value: number): unknown => expect.closeTo(value, 9);
    expect(shown).toEqual([
      ...[
        [1, close(152 - half(2))],
        [1, close(152)],
        [1, close(152 + half(2))],
      ],
      ...[
        [2, close(163 - half(3))],
        [2, close(163)],
        [2, close(163 + half(3))],
      ],
      ...[
        [3, 140],
        [3, 140],
        [3, 140],
        [null, null],
      ],
    ]);
    expect([5, 6, 7].map((row) => formulaAt(workings, row, 24))).toEqual([
      ...["IF(ISNUMBER($H$7),$H$7,N($D$7))", "N($D$7)", "IF(ISNUMBER($I$7),$I$7,N($D$7))"],
    ]);
  });

  it("draws a line for each build, with room on both sides and nothing written below", () => {
    expect(chart).toMatchObject({
      name: "Carry and its limits",
      area: WHERE,
      kind: "scatter",
      x: { title: "", least: 0.5, most: 3.5, hideLabels: true },
      // By hand: from C's mean, 140, to B's upper limit, 170.5, in steps of 5.
      y: { title: "Carry (yd)", format: "0", least: 135, most: 175 },
      legend: true,
    });
    expect(chart.series).toEqual(
      (["circle", "square", "diamond"] as const).map((marker, b) => ({
        name: ["A", "B", "C"][b],
        x: workingsArea(2 + 3 * b, 23, 3),
        y: workingsArea(2 + 3 * b, 24, 3),
        color: BUILD_COLORS[b],
        ...{ marker, markerSize: 9, line: "solid", unlisted: false },
      })),
    );
  });

  it("has an axis of at most eight steps, each a round figure", () => {
    const axis = (least: number, most: number) => {
      const session = sessionOfShots({ A: [150], B: [151] });
      const values = new Map([
        ...session.table.values,
        ["carry" as const, Float64Array.of(least, most)] as const,
      ]);
      const { y } = limits({ ...session, table: { ...session.table, values } }).chart;
      return [y.least, y.most];
    };
    // By hand: steps of 1, 2, 5, 10, 20, 50, 100 and 200, and a quarter of one free at both ends.
    expect([axis(150, 158), axis(150, 159), axis(150, 167), axis(150, 191)]).toEqual([
      ...[
        [149, 159],
        [148, 160],
        [145, 170],
        [140, 200],
      ],
    ]);
    expect([axis(150, 231), axis(100, 261), axis(100, 501), axis(100, 901)]).toEqual([
      ...[
        [140, 240],
        [50, 300],
        [0, 600],
        [0, 1000],
      ],
    ]);
    expect(axis(Number.NaN, Number.NaN)).toEqual([0, 1]);
    expect(axis(Number.NaN, 150)).toEqual([149, 151]);
  });

  it("is left out where carry was not measured", () => {
    const {
      draft,
      workings: none,
      session,
      comparison,
      layout,
    } = smallParts(without(smallSession(), "carry"));
    expect(putLimitsChart(draft, none, session, comparison, layout, WHERE)).toBe(false);
    expect([draft.plan().charts, none.plan().blocks]).toEqual([[], []]);
  });
});
