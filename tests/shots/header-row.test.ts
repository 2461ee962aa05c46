import { describe, expect, it } from "vitest";
import { bareUnit, findHeader, headerStrength, isUnitRow } from "../../src/shots/header-row.ts";

const cut = (text: string) => text.split("\n").map((line) => line.split(","));

describe("findHeader(records)", () => {
  it.each([
    ["Carry,Total\n150,160", 0],
    ["Harrow Lane\n\nPlayer,Nell\nShot,Carry,Mood\n1,150,good", 3],
    ["Club,,Ball\nShot,Carry,Total\n1,150,160", 1],
    ["Club,Path,Ball,Carry\nClub Speed,Path,Ball Speed,Carry\n100,1,150,250", 1],
    ["Total\nShot,Carry\n1,150", 1],
    ["Mood,Carry\ngood,150", 0],
  ])("finds the header of %j in record %i", (text, record) => {
    expect(findHeader(cut(text))).toBe(record);
  });

  it("finds none where no heading is known, or one without a figure below", () => {
    expect(findHeader(cut("a,b\n1,2"))).toBe(-1);
    expect(findHeader(cut("Carry\nhello"))).toBe(-1);
    expect(findHeader([])).toBe(-1);
  });
});

describe("headerStrength(cells)", () => {
  it("is 0 for rows of figures and rows without a metric", () => {
    expect(headerStrength(["1", "150", "Carry"])).toBe(0);
    expect(headerStrength(["Club", "Time"])).toBe(0);
    expect(headerStrength(["Club", "Carry"])).toBe(2);
  });
});

describe("isUnitRow(cells)", () => {
  it("takes units with a word or two beside them, but no figure", () => {
    expect(isUnitRow(["#", "(mph)", "[yd]", "text"])).toBe(true);
    expect(isUnitRow(["1", "mph", "yd"])).toBe(false);
    expect(isUnitRow(["a", "b", "yd"])).toBe(false);
    expect(isUnitRow(["", "-"])).toBe(false);
  });
});

describe("what a header row is made of", () => {
  it("is not read in a cell of more than 200 letters", () => {
    expect(headerStrength([`Carry${" ".repeat(195)}`, "Spin"])).toBe(2);
    expect(headerStrength([`Carry${" ".repeat(196)}`, "Spin"])).toBe(1);
  });

  it("is outweighed by as many cells that begin like a number, whatever stands before it", () => {
    expect(headerStrength(["Carry", "Spin", "150"])).toBe(2);
    for (const cell of ["150", " 150", "-1", "(3)", "+2", ".5"])
      expect(headerStrength(["Carry", cell]), cell).toBe(0);
  });

  it("may be a single heading above a figure of any dress, up to five rows below", () => {
    const cut = (cell: string, gap = 0) => [
      ["Lust", "Offline"],
      ...Array.from({ length: gap }, () => ["", ""]),
      ["", cell],
    ];
    for (const cell of ["150", " 150 ", "-4,5", "(3)", "left 4", "right 4", "L4", "R 4", ".5"])
      expect(findHeader(cut(cell)), cell).toBe(0);
    for (const cell of ["abc 4", "x", "", "shot 4"]) expect(findHeader(cut(cell)), cell).toBe(-1);
    expect(findHeader(cut("4", 4))).toBe(0);
    expect(findHeader(cut("4", 5))).toBe(-1);
  });

  it("gives way to the next row only where that knows more", () => {
    expect(
      findHeader([
        ["Carry", "Spin"],
        ["Carry", "Spin"],
        ["1", "2"],
      ]),
    ).toBe(0);
    expect(findHeader([["Lust"], ["Carry", "Spin"], ["1", "2"]])).toBe(1);
  });

  it("is a unit without the brackets that stand around the whole of it", () => {
    expect(["(m)", " [m] ", "{m}", "m", "(m", "a (m)", "(m) a"].map(bareUnit)).toEqual([
      "m",
      "m",
      "m",
      "m",
      "(m",
      "a (m)",
      "(m) a",
    ]);
  });
});
