import { describe, expect, it } from "vitest";
import { buildLayout } from "../../src/sheets/build-layout.ts";
import { planColumns } from "../../src/sheets/plan-columns.ts";
import { putPlan } from "../../src/sheets/plan-table.ts";
import { SET_TEXT } from "./bench-set.ts";
import { cellAt } from "./cell-at.ts";
import { formatAt, heightAt, stylesAlong } from "./looks-at.ts";
import { rowAt } from "./row-at.ts";
import { smallBench, smallJob } from "./small-bench.ts";

describe("putPlan(draft, job, layout)", () => {
  const { draft, job, layout } = smallBench();
  putPlan(draft, job, layout);
  const sheet = draft.plan();
  const { length } = layout.planColumns;

  it("has a row a club and a column for each figure, under a high heading", () => {
    expect(rowAt(sheet, 2, 0, 4)).toEqual(["Cut and build", "Length (in)", "Loft (°)", "Loft gap (°)"]);
    // By hand: 37 - 33 degrees of loft between the two.
    expect(rowAt(sheet, 3, 0, 4)).toEqual(["7", 37, 33, null]);
    expect(rowAt(sheet, 4, 0, 4)).toEqual(["8", 36.5, 37, 4]);
    expect(cellAt(sheet, 5, 0)).toBeNull();
    expect(stylesAlong(sheet, 2, length + 2)).toEqual([
      ...Array(length + 1).fill("headingCentre"),
      undefined,
    ]);
    expect(stylesAlong(sheet, 4, length + 2)).toEqual(["label", ...Array(length).fill("figure"), undefined]);
    expect([1, 2, 3].map((row) => heightAt(sheet, row))).toEqual([undefined, 60, undefined]);
  });

  it("shows each figure to the digits of its column", () => {
    for (const row of [3, 4]) {
      expect(layout.planColumns.map((_, c) => formatAt(sheet, row, 1 + c))).toEqual(
        layout.planColumns.map(({ format }) => format),
      );
    }
    expect([formatAt(sheet, 2, 1), formatAt(sheet, 5, 1)]).toEqual([undefined, undefined]);
  });
});

describe("planColumns(job)", () => {
  const formatOf = (heading: string, units: "us" | "metric") =>
    planColumns(smallJob(SET_TEXT, { units })).find((one) => one.heading === heading)?.format;

  it("shows lengths to a sixteenth of an inch, balance points to a hundredth, and centimetres to a tenth of a millimetre", () => {
    expect([formatOf("Length (in)", "us"), formatOf("Balance point (in)", "us")]).toEqual(["0.00##", "0.00"]);
    expect([formatOf("Length (cm)", "metric"), formatOf("Balance point (cm)", "metric")]).toEqual([
      "0.0#",
      "0.0#",
    ]);
  });

  it("leaves out what no club has, and keeps a column that some club has", () => {
    const headings = planColumns(smallJob()).map(({ heading }) => heading);
    expect(headings).toContain("Loft gap (°)");
    for (const one of ["Head on hand (g)", "Shaft no. in bin", "Drift (points)", "Carry (yd)"])
      expect(headings).not.toContain(one);
    const full = planColumns(smallJob(SET_TEXT)).map(({ heading }) => heading);
    expect(full).toEqual(expect.arrayContaining(["Head on hand (g)", "Shaft no. in bin", "Drift (points)"]));
  });
});

describe("buildLayout(job, from)", () => {
  it("stands the tables below each other, each with a free row behind it", () => {
    const layout = buildLayout(smallJob(), 4);
    expect([layout.tolerances, layout.plan, layout.planClubs, layout.check]).toEqual([4, 6, 7, 10]);
    expect([layout.checkClubs, layout.adjust, layout.adjustClubs]).toEqual([12, 15, 16]);
  });

  it("is as wide as the check, or as the plan where that is wider", () => {
    expect(buildLayout(smallJob(), 4).columns).toBe(1 + 6 * 4);
    const wide = buildLayout(smallJob(SET_TEXT), 4);
    expect(wide.planColumns.length).toBeGreaterThan(24);
    expect(wide.columns).toBe(1 + wide.planColumns.length);
  });

  it("names cells with their columns held, tolerances with both", () => {
    const layout = buildLayout(smallJob(), 4);
    expect(layout.tolerance("length")).toBe("$H$5");
    expect([layout.target("length", 1), layout.measured("length", 1)]).toEqual(["$F14", "$G14"]);
    expect([layout.difference("length", 1), layout.mark("length", 1)]).toEqual(["$H14", "$I14"]);
    expect([layout.columnOf("shaft"), layout.columnOf("lie")]).toEqual([1, 21]);
  });
});
