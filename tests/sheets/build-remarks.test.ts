import { describe, expect, it } from "vitest";
import { buildRemarks } from "../../src/sheets/build-remarks.ts";
import { smallJob } from "./small-bench.ts";

const set = (columns: string, rows: string, more = "target; swingweight; D2") =>
  `${more}\nshafts; 105\ngrip; 50\nclub; length; ${columns}\n${rows}`;
const remark = (text: string, start: string, facts = {}) =>
  buildRemarks(smallJob(text, facts)).find((line) => line.text.startsWith(start));

describe("buildRemarks(job)", () => {
  it("warns that a butt cut by the sheet leaves a club too long where bores are not known", () => {
    expect(remark(set("raw length; bore", "7; 37; 41; 1\n8; 36.5; 41;"), "Bore")).toEqual({
      text: "Bore was not entered for 1 of 2 clubs: their shafts count as reaching the sole, so cut length is over and butt trim under by the bore. Dry-fit the head and mark the cut by the club's length.",
      warns: true,
    });
    expect(remark(set("raw length; bore", "7; 37; 41; 1"), "Bore")).toBeUndefined();
    // One butt trim that is told is enough to cut a club wrong.
    expect(remark(set("raw length", "7; 37; 41\n8; 36.5;"), "Bore")?.warns).toBe(true);
  });

  it("only notes a bore that is not known where no butt trim is told either", () => {
    expect(remark(set("loft", "7; 37; 33"), "Bore")?.warns).toBe(false);
  });

  it("gives the factor that makes an inertia of weight, balance point and period, in either length", () => {
    // Compound pendulum: w g b T^2 / (4 pi^2), with g 980.665 cm/s2 and an inch of 2.54 cm.
    const factor = (text: string, units: "us" | "metric") =>
      Number(/squared × ([\d.]+)/.exec(remark(text, "Built to one", { units })!.text)![1]);
    const text = set("loft", "7; 37; 33", "target; inertia; 2650");
    const perCentimetre = 0.980665 / (2 * Math.PI) ** 2;
    expect(factor(text, "metric")).toBeCloseTo(perCentimetre, 5);
    expect(factor(text, "us")).toBeCloseTo(perCentimetre * 2.54, 4);
    expect(remark(text, "Built to one", { units: "us" })?.text).toContain("balance point in inches");
    expect(remark(text, "Built to one", { units: "metric" })?.text).toContain("balance point in centimetres");
    // The example of CLUB.INERTIA: 315 g balanced at 33.389576 in, 2.051431 s, are 2792.74 kg cm2.
    expect(315 * 33.389576 * 2.051431 ** 2 * factor(text, "us")).toBeCloseTo(2792.74, -1);
  });

  it("tells the small parts that no column shows, and where lead tape stands", () => {
    const more = "target; swingweight; D2\nferrule; 1.5\nepoxy; 2\ntape; 1; 6";
    const light = set("head", "7; 37; 259", more);
    expect(remark(light, "Each club counts")?.text).toBe(
      "Each club counts 1.5 g of ferrule and 2 g of epoxy.",
    );
    expect(remark(light, "Lead tape")?.text).toMatch(/ 1 in above the club's end, instead of weight added/);
    const inCentimetres = set("head", "7; 94; 259", `lengths; cm\n${more.replace("tape; 1;", "tape; 2.5;")}`);
    // By arithmetic: 2.5 cm are 0.984 in.
    expect(remark(inCentimetres, "Lead tape")?.text).toMatch(/^Lead tape stands 0.984 in above/);
    expect(remark(set("head", "7; 37; 300", more), "Lead tape")).toBeUndefined();
    // A set of which one head needs tape and another none.
    expect(remark(set("head", "7; 37; 259\n8; 36.5; 300", more), "Lead tape")).toBeDefined();
    expect(remark(set("loft", "7; 37; 33"), "Each club counts")).toBeUndefined();
  });

  it("says what drift is where shafts come from a bin", () => {
    expect(remark(set("loft", "7; 37; 33", "target; swingweight; D2\nbin; 104; 106"), "Drift")).toBeDefined();
    expect(remark(set("loft", "7; 37; 33"), "Drift")).toBeUndefined();
  });
});
