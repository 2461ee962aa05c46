import { describe, expect, it } from "vitest";
import type { GoalChances } from "../../src/fitting/chances.ts";
import type { Session } from "../../src/fitting/session.ts";
import type { SessionFlight } from "../../src/fitting/session-flight.ts";
import { type ComparisonParts, comparisonSheets } from "../../src/sheets/comparison-sheet.ts";
import { area } from "../../src/sheets/sheet-draft.ts";
import { cellAt, findText } from "./cell-at.ts";
import { heightAt, mergedAt, styleAt, widthAt } from "./looks-at.ts";
import { formulaAt } from "./row-at.ts";
import { smallParts, smallSession } from "./small-session.ts";

const NO_FLIGHT: SessionFlight = {
  ...{ density: null, airStated: false, calibration: null, same: [], flights: [], green: [], notes: [] },
};
const CHANCES = { builds: [{ build: "A", chance: 0.5 }] } as unknown as GoalChances;
const FLIGHTS = [
  {
    build: "A",
    points: [
      { ahead: 0, height: 0 },
      { ahead: 150, height: 0 },
    ],
  },
];

function sheetOf(of: Session = smallSession(), change: Partial<ComparisonParts> = {}) {
  const { session, comparison, shots, layout: workings } = smallParts(of);
  const words = { headline: "Clear.", reasons: ["Because."], costs: [], next: "" };
  const parts = { words, warnings: ["Beware."], chances: CHANCES, flight: NO_FLIGHT, made: "today" };
  return comparisonSheets({
    session,
    comparison,
    shots,
    workings,
    name: "Comparison",
    ...parts,
    ...change,
  })[0];
}
/** The first of the builds alone. */
function alone(): Session {
  const session = smallSession();
  const build = session.table.build.map(() => "A");
  return { ...session, builds: session.builds.slice(0, 1), table: { ...session.table, build } };
}

describe("comparisonSheets(parts), from top to bottom", () => {
  const sheet = sheetOf();

  it("has title, facts, a free row, then a line for each sentence and the evidence", () => {
    expect(Array.from({ length: 8 }, (_, row) => cellAt(sheet, row, 0))).toEqual([
      ...["Small", expect.stringContaining("can be typed here"), null, "Clear.", "Because.", "Beware."],
      ...[expect.objectContaining({ value: expect.stringContaining("Worked out today") }), null],
    ]);
    expect(
      [0, 1].map((row) => [mergedAt(sheet, row, 0), styleAt(sheet, row, 0), heightAt(sheet, row)]),
    ).toEqual([
      [[1, 14], "title", 28],
      [[1, 14], "subtitle", undefined],
    ]);
  });

  it("has three pictures beside each other over the whole width, the middle one widest", () => {
    expect(sheet.charts.map(({ area: where }) => where)).toEqual([
      area(8, 0, 15, 4),
      area(8, 4, 15, 6),
      area(8, 10, 15, 4),
    ]);
  });

  it("leaves no hole where there are no chances to draw", () => {
    const { charts } = sheetOf(smallSession(), { chances: null });
    expect(charts.map(({ area: where }) => where)).toEqual([area(8, 0, 15, 10), area(8, 10, 15, 4)]);
  });

  it("has table and windows below, each a free row on, then what the words mean", () => {
    expect(findText(sheet, "Build by build").row).toBe(24);
    expect(findText(sheet, "Target windows").row).toBe(34);
    const foot = [38, 39, 40, 41].map((row) => [
      cellAt(sheet, row, 0),
      styleAt(sheet, row, 0),
      heightAt(sheet, row),
    ]);
    expect(foot).toEqual([
      [expect.stringMatching(/^Mean: .*SD: .*Change: /), "small", 26],
      [expect.stringMatching(/^Target windows/), "small", 26],
      [expect.stringContaining("without the add-in"), "small", 26],
      [null, undefined, undefined],
    ]);
    expect(mergedAt(sheet, 39, 0)).toEqual([1, 14]);
  });

  it("makes room for the flights where there are any", () => {
    const flown = sheetOf(smallSession(), { flight: { ...NO_FLIGHT, flights: FLIGHTS } });
    expect(flown.charts.at(-1)!.area).toEqual(area(23, 0, 13, 14));
    expect(findText(flown, "Build by build").row).toBe(37);
  });

  it("makes room for each sentence that there is", () => {
    const words = { headline: "Clear.", reasons: ["r", ""], costs: ["c"], next: "n" };
    const said = sheetOf(smallSession(), { words, warnings: [] });
    expect(Array.from({ length: 4 }, (_, i) => cellAt(said, 3 + i, 0))).toEqual(["Clear.", "r", "c", "n"]);
    expect(said.charts[0]!.area.row).toBe(3 + 5 + 1);
  });

  it("lets the evidence look at the windows", () => {
    const { row } = findText(sheet, "Target windows");
    expect(formulaAt(sheet, 6, 0)).toContain(`SUM($C$${row + 3}:$D$${row + 3})`);
  });
});

describe("comparisonSheets(parts), the page", () => {
  it("is upright, all on one, with who and when at the foot", () => {
    const sheet = sheetOf({ ...smallSession(), player: "Ann", date: "1 May" });
    expect(sheet.print).toEqual({
      ...{ landscape: false, area: area(0, 0, 41, 14), pagesWide: 1, pagesTall: 1, footer: "Ann · 1 May" },
    });
    expect([0, 1, 2, 13, 14].map((column) => widthAt(sheet, column))).toEqual([17, 5, 7.5, 7.5, undefined]);
  });

  it("has the title at the foot where nobody was named, and asks to type them only at the head", () => {
    const sheet = sheetOf({ ...smallSession(), player: "", date: "", place: "", title: "Bay one" });
    expect(sheet.print!.footer).toBe("Bay one");
    expect(cellAt(sheet, 1, 0)).toBe("Player, date and place can be typed here");
  });

  it("is at least twelve columns wide, for the words", () => {
    const sheet = sheetOf(alone());
    expect([mergedAt(sheet, 0, 0), sheet.print!.area!.columns]).toEqual([[1, 12], 12]);
    expect(sheet.charts.map(({ area: where }) => [where.column, where.columns])).toEqual([
      [0, 4],
      [4, 4],
      [8, 4],
    ]);
  });

  it("says who, which clubs where they are few, when and where, and who plays left-handed", () => {
    const facts = (clubs: string[], change: Partial<Session> = {}) => {
      const session = smallSession();
      const club = session.table.build.map((_, i) => clubs[i % clubs.length]!);
      const table = { ...session.table, club };
      return cellAt(
        sheetOf({ ...session, player: "Ann", date: "1 May", place: "Bay 2", table, ...change }),
        1,
        0,
      );
    };
    expect(facts(["7i", ""])).toBe("Ann · 7i · 1 May · Bay 2");
    expect(facts(["7i", "8i", "9i"])).toBe("Ann · 7i · 8i · 9i · 1 May · Bay 2");
    expect(facts(["7i", "8i", "9i", ""])).toBe("Ann · 7i · 8i · 9i · 1 May · Bay 2");
    expect(facts(["7i", "8i", "9i", "PW"])).toBe("Ann · 1 May · Bay 2");
    expect(facts([""], { leftHanded: true, place: "" })).toBe("Ann · 1 May · left-handed");
  });
});
