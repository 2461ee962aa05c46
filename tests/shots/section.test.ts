import { describe, expect, it } from "vitest";
import { read } from "./read.ts";

/** What each column was taken for, with its unit and where that came from. */
const columns = (lines: readonly string[], options = {}) =>
  read(lines, options).columns.map(({ key, unit, unitFrom }) => [key, unit, unitFrom].join(" "));

describe("openSection(records, at, line, options), the header", () => {
  it("goes on in a second row where that makes more headings known", () => {
    const table = read(["Build,Ball,Landing,Carry", ",Speed,Angle,", "A,120,45,150"]);
    expect(table.columns.map(({ header }) => header)).toEqual([
      "Build",
      "Ball Speed",
      "Landing Angle",
      "Carry",
    ]);
    expect(table.row).toEqual([3]);
  });

  it("goes on to a row of units below either", () => {
    expect(columns(["Carry,Ball Speed", "m,km/h", "137.16,200"])).toEqual([
      "carry m row",
      "ballSpeed km/h row",
    ]);
    expect(columns(["Ball,Landing,Carry", "Speed,Angle,", "km/h,deg,m", "200,45,150"])).toEqual([
      "ballSpeed km/h row",
      "landingAngle degrees row",
      "carry m row",
    ]);
  });

  it("does not take a shot, a title or a word or two for its second row", () => {
    expect(read(["Carry,Spin,Angle", "150,6000,Landing", "151,6100,x"]).row).toEqual([2, 3]);
    expect(read(["Carry,Spin", "Ann,Bob", "151,6100"]).columns.map(({ header }) => header)).toEqual([
      "Carry",
      "Spin",
    ]);
    expect(read(["Carry,Spin", "150,", "151,6100"]).row).toEqual([2, 3]);
  });

  it("stands at the first row of figures where the fitter says what the columns are", () => {
    const table = read(["A,150,6000", "A,151,6100,9"], { columns: { 1: "build", 2: "carry", 3: "spin" } });
    expect(table.build).toEqual(["A", "A"]);
    expect([...table.values.get("carry")!]).toEqual([150, 151]);
    expect(table.columns).toHaveLength(4);
    expect(table.problems).toEqual([]);
  });
});

describe("openSection(records, at, line, options), columns of sides", () => {
  it("stay what the fitter says they are", () => {
    const text = ["Offline,Side", "5,L", "4,R"];
    expect([...read(text).values.get("offline")!]).toEqual([-5, 4]);
    expect([...read(text, { columns: { 2: "build" } }).values.get("offline")!]).toEqual([5, 4]);
  });

  it("look at the rows of their own section", () => {
    const table = read(["Carry,Offline,L/R", "150,5,L", "", "Carry,Height,L/R", "151,90,"]);
    expect([...table.values.get("offline")!]).toEqual([-5, Number.NaN]);
  });
});
