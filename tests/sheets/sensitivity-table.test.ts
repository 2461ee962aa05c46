import { describe, expect, it } from "vitest";
import type { BenchJob } from "../../src/sheets/bench-job.ts";
import { putSensitivities } from "../../src/sheets/sensitivity-table.ts";
import { cellAt } from "./cell-at.ts";
import { formatAt, mergedAt, styleAt } from "./looks-at.ts";
import { rowAt } from "./row-at.ts";
import { beyondModel, smallBench, smallJob, TWO_IRONS } from "./small-bench.ts";

function table(job: BenchJob = smallJob()) {
  const { draft } = smallBench(job);
  const end = putSensitivities(draft, job, 10, 19);
  return { end, sheet: draft.plan() };
}

describe("putSensitivities(draft, job, row, column)", () => {
  const { end, sheet } = table();

  it("has a row a change, with the rule of thumb, the model's points and its inertia", () => {
    expect(rowAt(sheet, 10, 22, 3)).toEqual(["Rule of thumb", "Model, points", "Model, kg cm2"]);
    expect([11, 12, 13, 14].map((row) => rowAt(sheet, row, 19, 4))).toEqual([
      ["0.5 in more length", null, null, 3],
      ["2 g more head", null, null, 1],
      ["5 g more grip", null, null, -1],
      ["9 g more shaft", null, null, 1],
    ]);
    // By arithmetic on the 8, of 36.5 in: 2 g over 22.5 in, in ounces, over 1.75 a point; 2 g at 92.71 cm from the butt.
    expect(rowAt(sheet, 12, 23, 2)).toEqual([
      expect.closeTo((2 * 22.5) / 28.349523125 / 1.75, 9),
      expect.closeTo((2 * 92.71 ** 2) / 1000, 6),
    ]);
    expect(end).toBe(15);
  });

  it("is dressed as a table", () => {
    const looks = (row: number) => [19, 21, 22, 24].map((column) => styleAt(sheet, row, column));
    expect(looks(10)).toEqual(["headingLeft", "headingLeft", "headingCentre", "headingCentre"]);
    for (const row of [11, 14]) {
      expect(looks(row)).toEqual(["label", "label", "figure", "figure"]);
      expect([22, 23, 24].map((column) => formatAt(sheet, row, column))).toEqual([
        ...["+0;-0;0", "+0.00;-0.00;0.00", "+0.0;-0.0;0.0"],
      ]);
    }
    for (const row of [10, 11, 14]) expect(mergedAt(sheet, row, 19)).toEqual([1, 3]);
    for (const row of [10, 15]) expect(formatAt(sheet, row, 23)).toBeUndefined();
  });

  it("is of the club that the target steps from, else the shafts, else the middle one", () => {
    const club = (target: string, shafts: string) => {
      const text = TWO_IRONS.replace("swingweight; D2", target).replace("shafts; 105", shafts);
      const title = cellAt(table(smallJob(`${text}9; 36; 41; 63\n`)).sheet, 10, 19);
      return /on club (.*)$/.exec(String(title))![1];
    };
    expect(club("swingweight; D2", "shafts; 105")).toBe("8");
    expect(club("swingweight; D2", "shafts; 105; 2;  9 ")).toBe("9");
    expect(club("inertia of; 7; D2", "shafts; 105; 2; 9")).toBe("7");
    const job = smallJob(TWO_IRONS.replace("\n7;", "\nPW;").replace("shafts; 105", "shafts; 105; 2; pw"));
    expect(cellAt(table(job).sheet, 10, 19)).toContain("on club PW");
    const [first, ...rest] = job.plan.clubs;
    const shafts = { kind: "steps", weight: 105, reference: " pW" } as const;
    const spaced = { plan: { ...job.plan, clubs: [{ ...first!, club: "Pw " }, ...rest] } };
    expect(cellAt(table({ ...job, ...spaced, request: { ...job.request, shafts } }).sheet, 10, 19)).toContain(
      "on club Pw",
    );
  });

  it("is left out where the model can say nothing", () => {
    const { end: same, sheet: empty } = table(beyondModel(smallJob()));
    expect([same, empty.blocks, empty.formats]).toEqual([10, [], []]);
  });
});
