import { describe, expect, it } from "vitest";
import {
  CHECKED_FIGURES,
  checkedFigures,
  FREQUENCY,
  figuresOf,
  tolerancesOf,
} from "../../src/sheets/checked-figures.ts";
import { smallJob, TWO_IRONS } from "./small-bench.ts";

describe("checkedFigures(units)", () => {
  it("is the same but for the length, which is in centimetres where shots are in metres", () => {
    expect(checkedFigures()).toEqual(
      CHECKED_FIGURES.map((one) => (one.key === "length" ? expect.anything() : one)),
    );
    const [club] = smallJob().plan.clubs;
    const length = (units?: "us" | "metric") => {
      const found = checkedFigures(units).find(({ key }) => key === "length")!;
      return [
        found.unit,
        found.format,
        found.differenceFormat,
        found.tolerance,
        found.most,
        found.target(club!),
      ];
    };
    expect(length()).toEqual(["in", "0.00##", "+0.00##;-0.00##;0.00", 0.0625, 100, 37]);
    // An inch is 25.4 mm exactly: 1.5875 mm, 2540 mm and 939.8 mm, to a tenth of a millimetre.
    expect(length("metric")).toEqual(["cm", "0.0#", "+0.0#;-0.0#;0.0", 0.16, 254, 93.98]);
    expect(checkedFigures("metric").filter(({ key }) => key !== "length")).toEqual(
      CHECKED_FIGURES.filter(({ key }) => key !== "length"),
    );
  });
});

describe("figuresOf(job)", () => {
  const keys = (text?: string) => figuresOf(smallJob(text)).map(({ key }) => key);
  const told = TWO_IRONS.replace("loft; lie", "loft; frequency")
    .replace("33; 62", "33; 300")
    .replace("37; 62.5", "37;");

  it("has frequency beside the usual six where the set file tells it of any club", () => {
    expect(keys()).toEqual(CHECKED_FIGURES.map(({ key }) => key));
    expect(keys(told)).toEqual([...CHECKED_FIGURES.map(({ key }) => key), "frequency"]);
    expect(smallJob(told).plan.clubs.map(FREQUENCY.target)).toEqual([300, null]);
  });
});

describe("tolerancesOf(request)", () => {
  it("is what the set file says, figure by figure, and else the usual", () => {
    // Common practice, no source.
    const usual = { shaft: 1, length: 0.0625, swingweight: 0.5, total: 3, loft: 0.5, lie: 0.5, frequency: 2 };
    expect(tolerancesOf(smallJob().request)).toEqual(usual);
    const own = smallJob(`tolerance; total; 4\n${TWO_IRONS}`);
    expect(tolerancesOf(own.request)).toEqual({ ...usual, total: 4 });
  });
});
