import { describe, expect, it } from "vitest";
import type { Session } from "../../src/fitting/session.ts";
import type { SessionFlight } from "../../src/fitting/session-flight.ts";
import { putFlightChart } from "../../src/sheets/flight-chart.ts";
import { BUILD_COLORS } from "../../src/sheets/palette.ts";
import { area, SheetDraft } from "../../src/sheets/sheet-draft.ts";
import { styleAt } from "./looks-at.ts";
import { rowAt } from "./row-at.ts";
import { smallSession } from "./small-session.ts";

const flight = (build: string, ahead: number, height: number) => ({
  build,
  points: [
    { ahead: 0, height: 0 },
    { ahead: ahead / 2, height },
    { ahead, height: 0 },
  ],
});

function drawn(flights: ReturnType<typeof flight>[], session: Session = smallSession()) {
  const [draft, workings] = [new SheetDraft("Comparison"), new SheetDraft("Workings")];
  const some = { flights } as unknown as SessionFlight;
  const there = putFlightChart(draft, workings, "Workings", session, some, area(40, 0, 13, 14));
  return { there, chart: draft.plan().charts[0]!, workings: workings.plan() };
}

describe("putFlightChart(...)", () => {
  const { there, chart, workings } = drawn([flight("B", 163, 80), flight("C", 140, 60)]);

  it("has two columns of places for each flight, behind those of the other charts", () => {
    expect(there).toBe(true);
    expect([1, 2, 3, 4, 5].map((row) => rowAt(workings, row, 29, 4))).toEqual([
      ["B: ahead", "B: height", "C: ahead", "C: height"],
      [0, 0, 0, 0],
      [81.5, 80, 70, 60],
      [163, 0, 140, 0],
      [null, null, null, null],
    ]);
    expect([styleAt(workings, 1, 32), styleAt(workings, 4, 32)]).toEqual(["headingCentre", "plain"]);
  });

  it("draws a way in each build's colour, every other one of the builds dashed, with its marker on top and landing", () => {
    const places = (row: number, column: number, rows: number) => ({
      sheet: "Workings",
      area: area(row, column, rows),
    });
    expect([6, 7, 8].map((row) => rowAt(workings, row, 29, 4))).toEqual([
      [81.5, 80, 70, 60],
      [163, 0, 140, 0],
      [null, null, null, null],
    ]);
    expect(chart.series).toEqual(
      [1, 2].flatMap((b) => {
        const [name, color] = [["A", "B", "C"][b], BUILD_COLORS[b]];
        const [x, y] = [27 + 2 * b, 28 + 2 * b];
        const [line, marker] = b === 1 ? ["dash", "square"] : ["solid", "diamond"];
        return [
          {
            ...{ name: `${name}: way`, x: places(2, x, 3), y: places(2, y, 3), color },
            ...{ marker: "none", markerSize: 0, line, unlisted: true },
          },
          {
            ...{ name, x: places(6, x, 2), y: places(6, y, 2), color },
            ...{ marker, markerSize: 8, line: "none", unlisted: false },
          },
        ];
      }),
    );
    expect(chart.alt).toMatch(/B .*80 ft high.*163\.0 yd far.* C .*60 ft high.*140\.0 yd far/);
    expect(chart).toMatchObject({
      name: "Mean flights from the side",
      alt: expect.stringContaining("2 builds"),
      area: area(40, 0, 13, 14),
      kind: "scatter",
      legend: true,
    });
  });

  it("has axes from 0 to a round figure just beyond the farthest and the highest of all", () => {
    expect(chart.x).toEqual({ title: "Carry (yd)", least: 0, most: 180, format: "0" });
    expect(chart.y).toEqual({ title: "Peak height (ft)", least: 0, most: 90, format: "0" });
    const ends = [9.5, 10, 11, 21, 51, 101, 201, 501].map(
      (most) => drawn([flight("A", most, 10)]).chart.x.most,
    );
    // By hand: 3 % more, up to the next step of 1, 1, 2, 5, 10, 20, 50, 100.
    expect(ends).toEqual([10, 11, 12, 25, 60, 120, 250, 600]);
    const swapped = drawn([flight("B", 140, 80), flight("C", 163, 60)]).chart;
    expect([swapped.x.most, swapped.y.most]).toEqual([180, 90]);
  });

  it("is in the units that are shown", () => {
    const { workings: metres } = drawn([flight("B", 100, 50)], { ...smallSession(), units: "metric" });
    // A yard is 0.9144 m and a foot 0.3048 m exactly: international yard and pound agreement of 1959.
    expect(rowAt(metres, 3, 29, 2)).toEqual([expect.closeTo(45.72, 9), expect.closeTo(15.24, 9)]);
  });

  it("is left out where no build was flown", () => {
    const { there: none, chart: nothing, workings: empty } = drawn([]);
    expect([none, nothing, empty.blocks]).toEqual([false, undefined, []]);
  });
});
