import { describe, expect, it } from "vitest";
import { cellName } from "../../src/sheets/a1.ts";
import { benchJob } from "../../src/sheets/bench-job.ts";
import { benchLengths } from "../../src/sheets/bench-lengths.ts";
import { benchWorkbook } from "../../src/sheets/bench-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import type { CellValue, SheetPlan } from "../../src/sheets/plan.ts";
import { answer } from "../club/answer.ts";
import { SET_TEXT } from "./bench-set.ts";
import { cellAt, findText } from "./cell-at.ts";
import { demoSession } from "./demo-session.ts";

/** An inch is 25.4 mm exactly: international yard and pound agreement of 1959; NIST SP 811 (2008), appendix B.6. */
const MM = 25.4;

function sheetIn(units: "us" | "metric", decimalMark = "."): SheetPlan {
  const session = { ...demoSession(), units, decimalMark };
  return answer(benchWorkbook(session, "105 g mid-launch", SET_TEXT, NOTHING_TAKEN, "now")).sheets[0]!;
}

const shown = (cell: CellValue) => (typeof cell === "object" && cell !== null ? cell.value : cell);
const below = (sheet: SheetPlan, heading: string, at = findText(sheet, heading)): number[] =>
  Array.from({ length: 6 }, (_, i) => Number(shown(cellAt(sheet, at.row + 1 + i, at.column))));
const texts = (sheet: SheetPlan) =>
  sheet.blocks.flatMap(({ cells }) => cells.flat()).filter((cell) => typeof cell === "string");

describe("the Build sheet where lengths are in centimetres", () => {
  const inches = sheetIn("us");
  const metric = sheetIn("metric");

  it("shows every length of the plan converted by 25.4 mm an inch, to a tenth of a millimetre", () => {
    for (const what of ["Length", "Raw length", "Tip trim", "Butt trim", "Cut length", "Balance point"]) {
      const [asked, found] = [below(inches, `${what} (in)`), below(metric, `${what} (cm)`)];
      expect(found, what).toEqual(asked.map((inch) => Math.round(inch * MM * 10) / 100));
    }
    // By hand: 38 x 2.54 = 96.52, less 1.27 a club.
    expect(below(metric, "Length (cm)")).toEqual([96.52, 95.25, 93.98, 92.71, 91.44, 90.17]);
  });

  it("leaves weights, lofts and swingweights as they are", () => {
    for (const what of ["Head needed (g)", "Cut weight (g)", "Loft (°)", "Total weight (g)"])
      expect(below(metric, what)).toEqual(below(inches, what));
  });

  it("holds the check and its tolerance in the same unit, and the formulas know the Rules in it", () => {
    const strip = findText(metric, "Length ±");
    // The set file allows 0.125 in: 3.175 mm, 0.32 cm to a tenth of a millimetre.
    expect(cellAt(metric, strip.row, strip.column + 2)).toBe(0.32);
    expect(cellAt(metric, strip.row, strip.column + 3)).toBe("cm");
    const check = findText(metric, "Length, cm");
    const target = cellAt(metric, check.row + 2, check.column);
    const plan = findText(metric, "Length (cm)");
    expect(target).toEqual({ formula: cellName(plan.row + 1, plan.column, "column"), value: 96.52 });
    const words = findText(metric, "What to do, in this order");
    const { formula } = cellAt(metric, words.row + 1, words.column) as { formula: string };
    // Equipment Rules, Part 2, Section 1c: 18 in is 45.72 cm, 48 in is 121.92 cm.
    expect(formula).toContain("<45.72,");
    expect(formula).toContain(">121.92)");
    expect(formula).toMatch(/"Cut "&.*&" cm off the butt/);
    expect(formula).not.toMatch(/ in off| in\. /);
    const bounds = metric.validations.find(({ area }) => area.column === check.column + 1);
    expect(bounds).toMatchObject({ least: 0, most: 254 });
  });

  it("says lengths in sentences in centimetres, with the decimal mark of the place", () => {
    const said = texts(sheetIn("metric", ",")).join("\n");
    expect(said).toContain("Tip trim 5,08 cm passes the maker's limit of 3,81 cm.");
    expect(said).toContain("45,72 cm at least and, but for putters, 121,92 cm at most");
    expect(said).toContain("1,27 cm more length");
    expect(said).not.toMatch(/\d in\b/);
    expect(texts(inches).join("\n")).toContain("Tip trim 2 in passes the maker's limit of 1.5 in.");
  });
});

it("turns no word of a sentence that is not a length", () => {
  const { words } = benchLengths("metric");
  expect(words("12 in the set, 5 in all, 8.10 in-oz, 3 inside")).toBe(
    "12 in the set, 5 in all, 8.10 in-oz, 3 inside",
  );
  expect(words("2 in off, 0.5 in.")).toBe("5.08 cm off, 1.27 cm.");
  expect(words("inch-ounces about 14 inches, grams, inches")).toBe(
    "inch-ounces about 14 inches, grams, centimetres",
  );
});

describe("what is said of a set", () => {
  it("refuses a set in the unit and with the mark that it was written in", () => {
    const refusal = (set: string, units: "us" | "metric", decimalMark = ".") =>
      benchJob({ ...demoSession(), units, decimalMark }, "105 g mid-launch", set) as { message: string };
    const short = (lengths: string, raw: string, club: string) =>
      `grip; 50\nshafts; 105; 3; 7\n${lengths}\nclub; length; raw length; swingweight\n7; ${club}; ${raw}; D2`;
    expect(refusal(short("lengths; cm", "90", "96"), "us").message).toContain(
      "The raw shaft is 90 cm, too short",
    );
    expect(refusal(short("lengths; cm", "90,5", "96"), "metric", ",").message).toContain("is 90,5 cm, too");
    expect(refusal(short("lengths; in", "35.5", "38"), "metric", ",").message).toContain("is 35,5 in, too");
    expect(refusal(short("lengths; cm", "-90", "96"), "us").message).toContain(
      "shaft length is -90 cm; it should be centimetres, more than 0 cm",
    );
  });

  it("warns of a club over the Rules in the unit shown", () => {
    const set = SET_TEXT.replace("5; 38; 26", "5; 48.5; 26").replace("5; 41; 0.5", "5; 55; 0.5");
    const session = { ...demoSession(), units: "metric" as const };
    const said = texts(
      answer(benchWorkbook(session, "105 g mid-launch", set, NOTHING_TAKEN, "now")).sheets[0]!,
    );
    // By hand: 48.5 x 2.54 = 123.19 and 48 x 2.54 = 121.92.
    expect(said.join(" ")).toContain(
      "123.19 cm is over 121.92 cm, the most that a club other than a putter may have",
    );
  });
});

it("says in which unit the set carries, and how a swingweight is typed", () => {
  const text = SET_TEXT.replace("raw length; bore", "raw length; bore; carry").replaceAll(
    "; 0.5\n",
    "; 0.5; 150\n",
  );
  const sheetOf = (units: "us" | "metric", decimalMark: string) => {
    const session = { ...demoSession(), units, decimalMark };
    return answer(benchWorkbook(session, "105 g mid-launch", text, NOTHING_TAKEN, "now")).sheets[0]!;
  };
  expect(texts(sheetOf("us", ".")).filter((cell) => /^Carry/.test(cell))).toEqual([
    "Carry (yd)",
    "Carry gap (yd)",
  ]);
  const metric = sheetOf("metric", ",");
  expect(texts(metric).filter((cell) => /^Carry/.test(cell))).toEqual(["Carry (m)", "Carry gap (m)"]);
  expect(metric.notes.map(({ text }) => text).join()).toContain("D2 or D2,3");
});
