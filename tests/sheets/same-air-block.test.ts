import { describe, expect, it } from "vitest";
import type { SameConditions } from "../../src/fitting/same-conditions.ts";
import type { Session } from "../../src/fitting/session.ts";
import type { SessionFlight } from "../../src/fitting/session-flight.ts";
import { putSameAir } from "../../src/sheets/same-air-block.ts";
import { cellAt } from "./cell-at.ts";
import { formatsAlong, heightAt, mergedAt, styleAt, stylesAlong } from "./looks-at.ts";
import { formulaAt, rowAt, shownAt } from "./row-at.ts";
import { smallParts, smallSession } from "./small-session.ts";

const carries = (
  build: string,
  measured: number | null,
  steps: readonly (number | null)[],
): SameConditions => ({
  ...{ build, metric: "carry", measured, clubSpeed: 84.26, shots: 3, computed: 0 },
  ...{ sameAir: steps[0]!, sameAirSameSpeed: steps[1]!, strikeAdjusted: steps[2]! },
});
const SAME = [carries("A", 152, [148, 150, null]), carries("B", null, [160, 155, null])];
const FLIGHT: SessionFlight = {
  ...{ density: 1.2346, airStated: false, calibration: null, flights: [], notes: ["A note of 1.5."] },
  same: SAME,
  green: [{ build: "B", verdict: "holds" }] as unknown as SessionFlight["green"],
};

function block(flight: Partial<SessionFlight> = {}, change: Partial<Session> = {}) {
  const { draft, workings, session, layout } = smallParts({ ...smallSession(), ...change });
  const end = putSameAir(draft, workings, session, { ...FLIGHT, ...flight }, layout, "today", 30);
  return { end, sheet: draft.plan(), workings: workings.plan() };
}

describe("putSameAir(...)", () => {
  const { end, sheet, workings } = block();

  it("keeps the flight model's factors on the workings, or the carry itself where none was measured", () => {
    expect([1, 2, 3, 4].map((row) => rowAt(workings, row, 36, 4))).toEqual([
      ["Build", "Standard air", "and same speed", "and usual strike"],
      ["A", 148 / 152, 150 / 152, null],
      ["B", 160, 155, null],
      [null, null, null, null],
    ]);
    expect([1, 3].map((row) => stylesAlong(workings, row, 41).slice(36))).toEqual([
      [...Array(4).fill("headingCentre"), undefined],
      [...Array(4).fill("plain"), undefined],
    ]);
  });

  it("has a row for each step that could be worked out, and no other", () => {
    expect([30, 31, 32, 33].map((row) => rowAt(sheet, row, 0, 2))).toEqual([
      [expect.stringContaining("in the same air"), null],
      ["In standard air", "yd"],
      ["and at 84.3 mph", "yd"],
      ["On a green", null],
    ]);
    expect(stylesAlong(sheet, 30, 15)).toEqual([...Array(14).fill("group"), undefined]);
    for (const row of [31, 32]) {
      expect(stylesAlong(sheet, row, 15)).toEqual(["label", "label", ...Array(12).fill("figure"), undefined]);
      expect(formatsAlong(sheet, row, 15)).toEqual([
        ...[undefined, undefined],
        ...Array(3).fill(["0.0", "0.0", "+0.0;-0.0;0.0", "0.0"]).flat(),
        undefined,
      ]);
    }
    const all = block({ same: [carries("A", 152, [148, 150, 151])] });
    expect(cellAt(all.sheet, 33, 0)).toBe("and usual strike");
    expect(formulaAt(all.sheet, 33, 2)).toContain("'Workings'!$AN$3");
    const some = block({ same: [SAME[0]!, carries("B", null, [160, 155, 151])] });
    expect(cellAt(some.sheet, 33, 0)).toBe("and usual strike");
    expect([cellAt(some.sheet, 33, 2), shownAt(some.sheet, 33, 6)]).toEqual([null, 151]);
  });

  it("works carries out from the live averages, and changes from the carries on the same row", () => {
    expect([2, 6].map((column) => formulaAt(sheet, 32, column))).toEqual([
      "IF(ISNUMBER('Workings'!$D$4),'Workings'!$D$4*'Workings'!$AM$3,\"\")",
      "'Workings'!$AM$4",
    ]);
    expect(Array.from({ length: 12 }, (_, i) => shownAt(sheet, 32, 2 + i))).toEqual([
      ...[150, null, null, null, 155, null, 5, null, null, null, null, null],
    ]);
    expect(formulaAt(sheet, 32, 8)).toBe('IF(AND(ISNUMBER($G$33),ISNUMBER($C$33)),$G$33-$C$33,"")');
  });

  it("shows no change where the baseline could not be flown", () => {
    const { sheet: lone } = block({ same: SAME.slice(1) });
    expect(Array.from({ length: 8 }, (_, i) => shownAt(lone, 31, 2 + i))).toEqual([
      ...[null, null, null, null, 160, null, null, null],
    ]);
  });

  it("says which build holds a green, and nothing of one that is not known", () => {
    expect(rowAt(sheet, 33, 2, 10)).toEqual([null, null, null, null, "holds", null, null, null, null, null]);
    expect([2, 6].map((column) => [mergedAt(sheet, 33, column), styleAt(sheet, 33, column)])).toEqual([
      [[1, 2], "figure"],
      [[1, 2], "figure"],
    ]);
    expect(stylesAlong(sheet, 33, 2)).toEqual(["label", "label"]);
    const none = block({ green: [] });
    expect(cellAt(none.sheet, 33, 0)).toContain("worked out today");
    expect(none.end).toBe(34);
  });

  it("says below when the factors were worked out, and what was assumed", () => {
    expect(cellAt(sheet, 34, 0)).toMatch(/^By factors .* worked out today\. A note of 1\.5\.$/);
    expect([mergedAt(sheet, 34, 0), styleAt(sheet, 34, 0), heightAt(sheet, 34)]).toEqual([
      [1, 14],
      "small",
      14,
    ]);
    expect(end).toBe(35);
    expect(cellAt(block({}, { decimalMark: "," }).sheet, 34, 0)).toContain("A note of 1,5.");
    expect(cellAt(block({}, { decimalMark: "," }).sheet, 32, 0)).toBe("and at 84,3 mph");
  });

  it("tells the air where it was stated, and how far the bay's flights lie from the model", () => {
    const words = (flight: Partial<SessionFlight>) => String(cellAt(block(flight).sheet, 34, 0));
    expect(words({})).not.toContain("kg/m3");
    expect(words({ airStated: true })).toContain("1.235 kg/m3");
    expect(words({ airStated: true, density: null })).not.toContain("kg/m3");
    const calibration = {
      model: { name: "Someone 1976" },
      drag: { value: 0.919, low: 0.9, high: 1 },
      lift: { value: 1.124, low: 1.1, high: 1.15 },
    } as unknown as SessionFlight["calibration"];
    // By hand: each factor less 1, in percent.
    expect(words({ calibration })).toMatch(
      /\(Someone 1976\) by -8\.1 % drag \(-10\.0 % to \+0\.0 %\) and \+12\.4 % lift \(\+10\.0 % to \+15\.0 %\)/,
    );
  });

  it("is in the units that are shown", () => {
    const { sheet: metres, workings: factors } = block({}, { units: "metric" });
    // A yard is 0.9144 m and a mile 1609.344 m exactly: international yard and pound agreement of 1959.
    expect(rowAt(metres, 31, 0, 2)).toEqual(["In standard air", "m"]);
    expect([shownAt(metres, 31, 2), shownAt(metres, 31, 6)]).toEqual([
      ...[expect.closeTo(148 * 0.9144, 9), expect.closeTo(160 * 0.9144, 9)],
    ]);
    expect(cellAt(metres, 32, 0)).toMatch(/^and at (135\.6 km\/h|37\.7 m\/s)$/);
    expect(rowAt(factors, 3, 36, 2)).toEqual(["B", expect.closeTo(160 * 0.9144, 9)]);
    expect(rowAt(factors, 2, 36, 2)).toEqual(["A", 148 / 152]);
  });

  it("is left out where no build could be flown", () => {
    const { end: same, sheet: empty, workings: none } = block({ same: [] });
    expect([same, empty.blocks, none.blocks]).toEqual([30, [], []]);
  });
});
