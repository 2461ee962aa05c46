import { describe, expect, it } from "vitest";
import { findHeader, headerStrength, isUnitRow } from "../../src/shots/header-row.ts";

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
