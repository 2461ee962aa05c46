import { describe, expect, it } from "vitest";
import { putTolerances } from "../../src/sheets/tolerance-strip.ts";
import { formatAt, mergedAt, styleAt } from "./looks-at.ts";
import { rowAt } from "./row-at.ts";
import { smallBench, smallJob, TWO_IRONS } from "./small-bench.ts";

function strip(text = TWO_IRONS, units: "us" | "metric" = "us") {
  const { draft, job, layout } = smallBench(smallJob(text, { units }));
  putTolerances(draft, job, layout);
  return draft.plan();
}

describe("putTolerances(draft, job, layout)", () => {
  const sheet = strip();
  const firsts = [1, 5, 9, 13, 17, 21];

  it("has the usual tolerance over each figure of the check, with its unit", () => {
    expect(rowAt(sheet, 0, 0, 26)).toEqual([
      "Tolerance",
      ...["Raw shaft ±", null, 1, "g", "Length ±", null, 0.0625, "in", "Swingweight ±", null, 0.5, "points"],
      ...["Total weight ±", null, 3, "g", "Loft ±", null, 0.5, "°", "Lie ±", null, 0.5, "°", null],
    ]);
    for (const column of firsts) {
      expect(mergedAt(sheet, 0, column)).toEqual([1, 2]);
      expect([0, 1, 2, 3].map((step) => styleAt(sheet, 0, column + step))).toEqual([
        ...["figure", "figure", "input", "label"],
      ]);
      expect([1, 2, 3].map((step) => formatAt(sheet, 0, column + step))).toEqual([
        undefined,
        "General",
        undefined,
      ]);
    }
    expect(styleAt(sheet, 0, 0)).toBe("label");
  });

  it("takes nothing below 0 and nothing that is no number", () => {
    expect(sheet.validations).toEqual(
      firsts.map((column) => ({
        area: { row: 0, column: column + 2, rows: 1, columns: 1 },
        kind: "number",
        least: 0,
        most: 1000,
        message: expect.stringContaining("0 or more"),
      })),
    );
    expect(sheet.validations[1]!.message).toContain("length may be");
  });

  it("takes the set file's own, each for its figure", () => {
    const own = ["shaft; 2", "length; 0.25", "swingweight; 1", "total; 4", "loft; 0.75", "lie; 1.5"];
    const text = own.map((one) => `tolerance; ${one}\n`).join("") + TWO_IRONS;
    expect(firsts.map((column) => rowAt(strip(text), 0, column + 2, 1)[0])).toEqual([
      2, 0.25, 1, 4, 0.75, 1.5,
    ]);
    // An inch is 25.4 mm exactly: 0.25 in is 0.635 cm, 0.64 to a tenth of a millimetre.
    expect(rowAt(strip(text, "metric"), 0, 7, 2)).toEqual([0.64, "cm"]);
  });
});
