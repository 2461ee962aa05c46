import { describe, expect, it } from "vitest";
import { planColumns } from "../../src/shots/plan-columns.ts";
import { read } from "./read.ts";

const plan = (headers: string[], options = {}, units: string[] | null = null) =>
  planColumns(headers, units, 7, options);
const keys = (headers: string[], options = {}) => plan(headers, options).columns.map(({ key }) => key);

describe("planColumns(headers, unitCells, line, options), what a column holds", () => {
  it("is what the first proper name says, and a weak one only where there is no better", () => {
    expect(keys(["Carry", "Carry distance"])).toEqual(["carry", null]);
    expect(keys(["Shaft", "Build"])).toEqual([null, "build"]);
    expect(keys(["Build", "Shaft"])).toEqual(["build", null]);
    expect(keys(["Shaft", "Varilla"])).toEqual(["build", null]);
    expect(keys(["", "Lust"])).toEqual([null, null]);
  });

  it("is what the fitter says, before any heading", () => {
    expect(keys(["Lust", "Carry"], { columns: { 1: "carry" } })).toEqual(["carry", null]);
    expect(keys(["Carry", "Lust"], { columns: { 2: "carry" } })).toEqual([null, "carry"]);
    expect(keys(["Carry", "Total"], { columns: { 1: null } })).toEqual([null, "total"]);
    expect(keys(["Shaft", "Lust"], { columns: { 2: "build" } })).toEqual([null, "build"]);
  });

  it("does not follow a wish for something that there is not", () => {
    expect(keys(["Carry"], { columns: { 1: "mood" } })).toEqual(["carry"]);
    expect(keys(["Lust"], { columns: { 1: "toString" } })).toEqual([null]);
  });

  it("is told where a second column has the same proper name, by the first one's place", () => {
    const { problems } = plan(["Lust", "Carry", "Shaft", "Carry", "Varilla"]);
    expect(problems).toEqual([
      {
        row: 7,
        column: 4,
        found: "Carry",
        message: expect.stringMatching(/^Row 7, column 4: "Carry" .* column 2 /),
      },
    ]);
  });
});

describe("planColumns(headers, unitCells, line, options), the unit", () => {
  const unit = (header: string, cell: string | null = null, options = {}) => {
    const found = plan([header], options, cell === null ? null : [cell]);
    const { unit: name, unitFrom } = found.columns[0]!;
    return [name, unitFrom, found.problems.length];
  };

  it("is the fitter's, else the heading's, else that of the row below, else the usual one", () => {
    expect(unit("Carry (m)", "ft", { units: { 1: "yd" } })).toEqual(["yd", "header", 0]);
    expect(unit("Carry (m)", "ft")).toEqual(["m", "header", 0]);
    expect(unit("Carry", " [m] ")).toEqual(["m", "row", 0]);
    expect(unit("Carry", " ")).toEqual(["yd", "assumed", 0]);
    expect(unit("Carry")).toEqual(["yd", "assumed", 0]);
  });

  it("is none for names and for a metric without one", () => {
    expect(unit("Build (m)", "m")).toEqual(["", "none", 0]);
    expect(unit("Smash", "m")).toEqual(["", "none", 0]);
  });

  it("that measures something else, or nothing, is told and passed over", () => {
    expect(unit("Carry (rpm)")).toEqual(["yd", "assumed", 1]);
    expect(unit("Carry", "bananas")).toEqual(["yd", "assumed", 1]);
    expect(unit("Carry (rpm)", "m")).toEqual(["m", "row", 1]);
    expect(plan([" Carry "], { units: { 1: " bananas " } }).problems[0]).toEqual({
      row: 7,
      column: 1,
      found: " bananas ",
      message: 'Row 7, column 1: found "bananas" as the unit of "Carry"; yd would do, and is taken.',
    });
  });
});

describe("columns of names and of what is kept", () => {
  it("are read without gaps, and are empty where there is none", () => {
    const table = read(["Club,Shot,Time,Carry", " 7i , 1 , 14:05 ,150", "8i,2,,151"]);
    expect([table.club, table.shot, table.time]).toEqual([
      ["7i", "8i"],
      ["1", "2"],
      ["14:05", ""],
    ]);
    const none = read(["Carry", "150"]);
    expect([none.club, none.shot, none.time]).toEqual([[""], [""], [""]]);
  });

  it("take a club from the title above, where no column names it", () => {
    const table = read(["Club: 7i", "Carry,Spin", "150,6000", "Windy", "151,6100", "Club: 8i", "152,6200"]);
    expect(table.club).toEqual(["7i", "7i", "8i"]);
    expect(table.shot).toEqual(["", "", ""]);
    expect(read(["Carry,Spin", "150,6000", "Club: 8i", "152,6200"]).club).toEqual(["", "8i"]);
  });

  it("say which shots count, and point at what is neither yes nor no", () => {
    const table = read(["Carry,Keep", "150,yes", "151,no", "152, perhaps "]);
    expect(table.keep).toEqual([true, false, true]);
    expect(table.problems).toEqual([
      {
        row: 4,
        column: 2,
        found: "perhaps",
        message: expect.stringMatching(/^Row 4, column 2 \(Keep\): found "perhaps"/),
      },
    ]);
    expect(read(["Keep,Carry", "no,150", "yes,151"]).keep).toEqual([false, true]);
    expect(read(["Carry,Keep", "150,no", "Carry,Spin", "151,6000"]).keep).toEqual([false, true]);
  });

  it("are kept as they are where they are not known, without those that hold nothing", () => {
    const table = read(["Carry,,Lust,,", "150,, 3 ,x,", "Carry,Lust,Spin", "151,4,6000"]);
    expect(table.extras).toEqual([
      { header: "Lust", cells: ["3", ""] },
      { header: "Column 4", cells: ["x", ""] },
      { header: "Lust", cells: ["", "4"] },
    ]);
  });
});

describe("what was not understood", () => {
  it("is told in the order of rows, and of columns within one", () => {
    const table = read(["Carry,Total,Spin,Keep", "x,y,6000,maybe", "150,140,z,yes", "900,950,6000,yes"]);
    expect(table.problems.map(({ row, column }) => `${row}.${column}`)).toEqual([
      "2.1",
      "2.2",
      "2.4",
      "3.1",
      "3.3",
      "4.1",
      "4.2",
    ]);
  });

  it("says what would do, by the metric", () => {
    const said = (header: string) => read([`Carry,${header}`, "150,odd"]).problems[0]!.message;
    expect(said("Smash")).toMatch(/found "odd"; .*1\.4/);
    expect(said("Spin")).toMatch(/found "odd"; .*rpm|found "odd"; .*\d{4}/);
    expect(said("Launch angle")).not.toBe(said("Spin"));
    expect(
      new Set(["Smash", "Spin", "Launch angle", "Flight time", "Offline", "Strike Y", "Height"].map(said))
        .size,
    ).toBe(7);
  });
});
