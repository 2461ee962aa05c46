import { describe, expect, it } from "vitest";
import type { BenchJob } from "../../src/sheets/bench-job.ts";
import { putParts } from "../../src/sheets/parts-table.ts";
import { cellAt } from "./cell-at.ts";
import { formatAt, mergedAt, styleAt } from "./looks-at.ts";
import { formulaAt, rowAt, shownAt } from "./row-at.ts";
import { smallBench, smallJob, TWO_IRONS } from "./small-bench.ts";

function list(job: BenchJob = smallJob()) {
  const { draft } = smallBench(job);
  const end = putParts(draft, job, 10, 13);
  return { end, sheet: draft.plan() };
}

describe("putParts(draft, job, row, column)", () => {
  const { end, sheet } = list();
  const heads = smallJob().plan.clubs.reduce((sum, { headWeight }) => sum + headWeight, 0);

  it("has a line for each part, pieces and grams beside it, and native totals below", () => {
    expect(rowAt(sheet, 10, 13, 5)).toEqual(["Parts list", null, null, "Pieces", "Grams in all"]);
    expect(rowAt(sheet, 11, 13, 5)).toEqual(["Head", null, null, 2, expect.closeTo(heads, 9)]);
    expect(rowAt(sheet, 12, 13, 5)).toEqual(["Raw shaft: 105 g", null, null, 2, 210]);
    expect(rowAt(sheet, 13, 13, 5)).toEqual(["Grip", null, null, 2, 100]);
    expect(cellAt(sheet, 14, 13)).toBe("Total");
    expect([shownAt(sheet, 14, 16), shownAt(sheet, 14, 17)]).toEqual([6, expect.closeTo(heads + 310, 9)]);
    expect([formulaAt(sheet, 14, 16), formulaAt(sheet, 14, 17)]).toEqual(["SUM(Q12:Q14)", "SUM(R12:R14)"]);
    expect(end).toBe(15);
  });

  it("is dressed as a list", () => {
    const looks = (row: number) => [13, 15, 16, 17].map((column) => styleAt(sheet, row, column));
    expect(looks(10)).toEqual(["headingLeft", "headingLeft", "headingCentre", "headingCentre"]);
    expect(looks(12)).toEqual(["label", "label", "figure", "figure"]);
    expect(looks(14)).toEqual(["label", "label", "figureStrong", "figureStrong"]);
    for (const row of [10, 11, 12, 13, 14]) expect(mergedAt(sheet, row, 13)).toEqual([1, 3]);
    for (const row of [11, 14])
      expect([16, 17].map((column) => formatAt(sheet, row, column))).toEqual(["0", "0.0"]);
    expect([formatAt(sheet, 10, 16), formatAt(sheet, 15, 16)]).toEqual([undefined, undefined]);
  });

  it("leaves tenths out where ten kilograms would not fit the column with them", () => {
    // By arithmetic: two raw shafts of 5,000 g alone.
    const heavy = list(
      smallJob(TWO_IRONS.replace("swingweight; D2", "inertia; 30000").replace("105", "5000")),
    ).sheet;
    expect([formatAt(heavy, 11, 17), formatAt(heavy, 14, 17)]).toEqual(["0", "0"]);
  });

  it("calls a shaft by the build only where all weigh what the build says", () => {
    const named = (text: string, build: BenchJob["build"], facts = {}) =>
      cellAt(list({ ...smallJob(text, facts), build }).sheet, 12, 13);
    const of = (shafts: string) => TWO_IRONS.replace("shafts; 105", shafts);
    expect(named(TWO_IRONS, { name: "Red", weight: 105 })).toBe("Raw shaft: Red");
    expect(named(TWO_IRONS, { name: "Red", weight: 106 })).toBe("Raw shaft: 105 g");
    expect(named(TWO_IRONS, { name: "Red", weight: 106, profile: "mid", flex: "S" })).toBe(
      "Raw shaft: 105 g, mid, S",
    );
    expect(named(of("shafts; 105; 2.26; 7"), { name: "Red", weight: 105 })).toBe("Raw shaft: 105 to 107.3 g");
    expect(named(of("shafts; 105; 2.5; 7"), { name: "Red" }, { decimalMark: "," })).toBe(
      "Raw shaft: 105 to 107,5 g",
    );
    expect(named(TWO_IRONS, { name: "Red", weight: 105, flex: "" })).toBe("Raw shaft: Red");
  });

  it("calls the head by the build's, and writes what is too long for its line smaller", () => {
    const build = { name: "Red", weight: 105, head: "a cast cavity", flex: "stiff" };
    const { sheet: said } = list({ ...smallJob(), build });
    expect([cellAt(said, 11, 13), styleAt(said, 11, 13)]).toEqual(["Head: a cast cavity", "label"]);
    expect(cellAt(said, 13, 13)).toBe("Grip");
    const length = (letters: number) =>
      styleAt(list({ ...smallJob(), build: { ...build, head: "x".repeat(letters - 6) } }).sheet, 11, 13);
    expect([length(20), length(21)]).toEqual(["label", "small"]);
  });
});
