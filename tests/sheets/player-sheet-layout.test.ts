import { describe, expect, it } from "vitest";
import type { PlayerWords } from "../../src/fitting/player-words.ts";
import type { Session } from "../../src/fitting/session.ts";
import type { ChartPlan } from "../../src/sheets/plan.ts";
import { playerSheet } from "../../src/sheets/player-sheet.ts";
import { area, formula } from "../../src/sheets/sheet-draft.ts";
import { cellAt } from "./cell-at.ts";
import { formatAt, heightAt, mergedAt, styleAt, stylesAlong, widthAt } from "./looks-at.ts";
import { formulaAt, rowAt, shownAt } from "./row-at.ts";
import { smallParts, smallSession } from "./small-session.ts";

const WORDS: PlayerWords = {
  tried: ["You tried three."],
  suggestion: "Take B.",
  why: ["It goes farther.", "It goes higher."],
  sure: ["Quite sure."],
  between: { from: "A", to: "B" },
  changes: [
    {
      metric: "carry",
      label: "Carry",
      meaning: "How far it flies",
      from: 152,
      to: 163,
      words: "11 yd farther",
    },
    { metric: "smash", label: "Strike", meaning: "How well it is hit", from: 1.3, to: 1.35, words: "better" },
  ] as unknown as PlayerWords["changes"],
  meanings: ["Carry: how far."],
};
const CHARTS = ["One", "Two"].map((name) => ({ name, area: area(0, 0) }) as ChartPlan);
const EVIDENCE = formula("'Comparison'!$A$7", "Worked out");

function page(words: Partial<PlayerWords> = {}, charts = CHARTS, change: Partial<Session> = {}) {
  const { session, layout } = smallParts({ ...smallSession(), player: "Ann", date: "1 May", ...change });
  return playerSheet({
    ...{
      session,
      words: { ...WORDS, ...words },
      workings: layout,
      name: "Player",
      charts,
      evidence: EVIDENCE,
    },
  });
}

describe("playerSheet(parts)", () => {
  const sheet = page();
  /** Text, reach, look and height of a line across the page. */
  const line = (row: number) => [
    cellAt(sheet, row, 0),
    mergedAt(sheet, row, 0)[1],
    styleAt(sheet, row, 8),
    heightAt(sheet, row),
  ];

  it("begins with what it is, of whom and when, in cells that can be typed over", () => {
    expect([line(0).slice(1), line(1)]).toEqual([
      [9, "title", 28],
      ["Small", 9, "subtitle", 18],
    ]);
    expect(rowAt(sheet, 2, 0, 6)).toEqual(["Player", "Ann", null, null, "Shop", null]);
    expect(rowAt(sheet, 3, 0, 6)).toEqual(["Date", "1 May", null, null, "Fitted by", null]);
    for (const row of [2, 3]) {
      expect(stylesAlong(sheet, row, 9)).toEqual([
        "label",
        ...Array(3).fill("input"),
        "label",
        ...Array(4).fill("input"),
      ]);
      expect([mergedAt(sheet, row, 1), mergedAt(sheet, row, 5), heightAt(sheet, row)]).toEqual([
        [1, 3],
        [1, 4],
        19,
      ]);
    }
    expect(rowAt(page({}, CHARTS, { place: "Bay 2" }), 2, 4, 2)).toEqual(["Shop", "Bay 2"]);
    const left = page({}, CHARTS, { leftHanded: true });
    expect(rowAt(left, 4, 0, 2)).toEqual(["Plays", "Left-handed"]);
    expect([cellAt(left, 5, 0), cellAt(left, 6, 0)]).toEqual([null, cellAt(sheet, 5, 0)]);
  });

  it("says what was tried, what we suggest and why, and how sure that is", () => {
    const group = (text: string) => [expect.stringContaining(text), 9, "group", 20];
    const sentence = (text: string) => [text, 9, "sentence", 17.5];
    expect(Array.from({ length: 8 }, (_, i) => line(5 + i))).toEqual([
      group("tried"),
      sentence("You tried three."),
      group("suggest"),
      ["Take B.", 9, "sentenceStrong", 24],
      sentence("It goes farther."),
      sentence("It goes higher."),
      group("sure"),
      sentence("Quite sure."),
    ]);
  });

  it("has its pictures side by side over the whole page", () => {
    expect(sheet.charts).toEqual([
      { name: "One", area: area(13, 0, 17, 4) },
      { name: "Two", area: area(13, 4, 17, 5) },
    ]);
    expect(page({}, CHARTS.slice(0, 1)).charts[0]!.area).toEqual(area(13, 0, 17, 9));
  });

  it("has both averages of each figure, alive, with what it is and what changed", () => {
    expect(rowAt(sheet, 31, 0, 9)).toEqual([
      ...[expect.stringContaining("on average"), null, null, null, "A", "B", null],
      ...[expect.stringContaining("From the one"), null],
    ]);
    expect(stylesAlong(sheet, 31, 9)).toEqual([
      ...Array(4).fill("headingLeft"),
      ...["headingCentre", "headingCentre", "headingLeft", "headingLeft", "headingLeft"],
    ]);
    expect([mergedAt(sheet, 31, 0), mergedAt(sheet, 31, 7), heightAt(sheet, 31)]).toEqual([
      [1, 4],
      [1, 2],
      32,
    ]);
    expect([0, 1, 7].map((column) => cellAt(sheet, 32, column))).toEqual([
      ...["Carry, yd", "How far it flies", "11 yd farther"],
    ]);
    expect([4, 5].map((column) => [formulaAt(sheet, 32, column), shownAt(sheet, 32, column)])).toEqual([
      ["'Workings'!$D$4", 152],
      ["'Workings'!$D$7", 163],
    ]);
    expect([mergedAt(sheet, 32, 1), mergedAt(sheet, 32, 7), heightAt(sheet, 32)]).toEqual([
      [1, 3],
      [1, 2],
      24,
    ]);
    expect(stylesAlong(sheet, 32, 9)).toEqual([
      ...["label", "small", "small", "small", "figure", "figure", undefined, "sentence", "sentence"],
    ]);
    expect([formatAt(sheet, 32, 4), formatAt(sheet, 32, 5), formatAt(sheet, 33, 5)]).toEqual([
      "0.0",
      "0.0",
      "0.00",
    ]);
    expect(cellAt(sheet, 33, 0)).toBe("Strike");
  });

  it("explains its words, and ends with when they were worked out", () => {
    expect([line(34)[2], line(35), line(36)]).toEqual([
      "group",
      ["Carry: how far.", 9, "small", 13],
      [EVIDENCE, 9, "small", 14],
    ]);
    expect(sheet.print).toEqual({ landscape: false, area: area(0, 0, 37, 9), pagesWide: 1, pagesTall: 1 });
  });

  it("leaves out pictures and changes where there are none", () => {
    const plain = page({ between: null }, []);
    expect(plain.charts).toEqual([]);
    expect([cellAt(plain, 13, 0), cellAt(plain, 14, 0)]).toEqual(["Words on this page", "Carry: how far."]);
  });

  it("gives long sentences the lines that they need", () => {
    // A line across the page surely holds 122 letters, 155 small ones.
    const long = page({
      tried: ["a".repeat(122), "b".repeat(123)],
      meanings: ["m".repeat(155), "n".repeat(156)],
    });
    expect([6, 7].map((row) => heightAt(long, row))).toEqual([17.5, 33]);
    expect([36, 37].map((row) => heightAt(long, row))).toEqual([13, 25]);
    // What changed holds 38 letters; what a figure is always has room for two small lines.
    const [carry, smash] = WORDS.changes as [PlayerWords["changes"][0], PlayerWords["changes"][0]];
    const changes = [
      { ...carry, words: "c".repeat(38) },
      { ...smash, words: "d".repeat(39) },
    ];
    expect([32, 33].map((row) => heightAt(page({ changes }), row))).toEqual([24, 31]);
  });

  it("has the widths that its words were measured for", () => {
    expect(Array.from({ length: 10 }, (_, column) => widthAt(sheet, column))).toEqual([
      ...[18, 14, 14, 14, 13, 13, 1.5, 21, 21],
      undefined,
    ]);
  });

  it("shows the averages in the unit of the place", () => {
    const metres = page({}, CHARTS, { units: "metric" });
    expect(cellAt(metres, 32, 0)).toBe("Carry, m");
    // A yard is 0.9144 m exactly: international yard and pound agreement of 1959.
    expect(shownAt(metres, 32, 4)).toBeCloseTo(152 * 0.9144, 9);
  });
});
