import { describe, expect, it } from "vitest";
import { figureParts } from "../../src/shots/figure-parts.ts";
import { markedNumber } from "../../src/shots/marked-number.ts";

describe("figureParts(cell)", () => {
  it.each([
    ["12,3 yd L", { before: "", sign: "", digits: "12,3", behind: "yd L" }],
    ["L -4", { before: "L", sign: "-", digits: "4", behind: "" }],
    [" \u2212 4.5\u00a0m ", { before: "", sign: "-", digits: "4.5", behind: "m" }],
    ["+ 4", { before: "", sign: "+", digits: "4", behind: "" }],
    ["(4.5)", { before: "", sign: "-", digits: "4.5", behind: "" }],
    ["( 4.5 m )", { before: "", sign: "-", digits: "4.5", behind: "m" }],
    ["1 234,5", { before: "", sign: "", digits: "1 234,5", behind: "" }],
    ["4.", { before: "", sign: "", digits: "4.", behind: "" }],
    [".5", { before: "", sign: "", digits: ".5", behind: "" }],
    ["4°L", { before: "", sign: "", digits: "4", behind: "° L" }],
    ["4º", { before: "", sign: "", digits: "4", behind: "º" }],
    ["a (4) b", { before: "a (", sign: "", digits: "4", behind: ") b" }],
  ])("takes %j apart", (cell, parts) => {
    expect(figureParts(cell)).toEqual(parts);
  });

  it("finds none, or more than one", () => {
    for (const cell of ["", "abc", "4 of 5", "4-5", "1e5", "12:30"])
      expect(figureParts(cell), cell).toBeNull();
  });

  it("looks at no cell of more than 60 letters", () => {
    expect(figureParts(`4${"x".repeat(59)}`)).not.toBeNull();
    expect(figureParts(`4${"x".repeat(60)}`)).toBeNull();
  });
});

describe("markedNumber(text, decimal)", () => {
  it.each([
    ["1'234,5", ",", 1234.5],
    ["1 234 567.5", ".", 1234567.5],
    [".5", ".", 0.5],
    ["5.", ".", 5],
    ["1234", ",", 1234],
    ["1,234", ".", 1234],
    ["1,234", ",", 1.234],
  ] as const)("reads %j with the mark %j as %d", (text, mark, value) => {
    expect(markedNumber(text, mark)).toBe(value);
  });

  it.each([
    ["1.2.3", "."],
    ["12.34", ","],
    ["1,23", "."],
    ["1 234'567", "."],
    ["1.2 3", "."],
    ["1.x2", "."],
    ["1.2x", "."],
    [".", "."],
    ["", "."],
    [",5", "."],
    ["x.5", "."],
    ["1234 567", "."],
  ] as const)("does not read %j with the mark %j", (text, mark) => {
    expect(markedNumber(text, mark)).toBeNaN();
  });
});
