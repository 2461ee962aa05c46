import { describe, expect, it } from "vitest";
import { idleRow } from "../../src/shots/idle-row.ts";
import { readTitle } from "../../src/shots/title-line.ts";

describe("readTitle(cells)", () => {
  it.each([
    [["95 g mid", "", ""], "perhaps a build", "95 g mid"],
    [["Build: 95 g mid"], "build", "95 g mid"],
    [["Shaft", "95 g mid"], "build", "95 g mid"],
    [["Setup =", "A"], "build", "A"],
    [["Club: Seven"], "club", "Seven"],
    [["Player: Nell Ashdown"], "something else", "Player: Nell Ashdown"],
    [["Date", "12 May"], "something else", "Date 12 May"],
    [["Mid: 95 g"], "perhaps a build", "Mid: 95 g"],
    [['=HYPERLINK("x")'], "perhaps a build", '=HYPERLINK("x")'],
  ])("reads %j as %s", (cells, says, text) => {
    expect(readTitle(cells)).toEqual({ says, text });
  });

  it("answers null for figures and for rows of more cells", () => {
    for (const cells of [["95"], ["", ""], ["a", "b"], ["a", "b", "c"]]) expect(readTitle(cells)).toBeNull();
  });
});

describe("idleRow(cells)", () => {
  it.each([
    [["", " "], "an empty row"],
    [["-", "n/a"], "an empty row"],
    [["---", ":--:", ""], "a ruled line"],
    [["======"], "a ruled line"],
    [["Carry", "Total"], "a header"],
    [["", "(yd)", "[m]"], "units"],
    [["Units", "mph", "yd"], "units"],
    [["95 g mid"], null],
  ])("takes %j for %s", (cells, what) => {
    expect(idleRow(cells)).toBe(what);
  });
});

describe("a title with a label", () => {
  it.each([
    [["Build:", "A"], "build", "A"],
    [["Build =", "A"], "build", "A"],
    [[" Build ", " A "], "build", "A"],
    [["Build : A = B"], "build", "A = B"],
    [["Carry: far"], "something else", "Carry: far"],
    [["Build:A"], "build", "A"],
    [[`${"x".repeat(41)}: A`], "perhaps a build", `${"x".repeat(41)}: A`],
    [["Build:"], "perhaps a build", "Build:"],
    [["12: A"], "perhaps a build", "12: A"],
    [["Build: A\nB"], "build", "A\nB"],
  ])("reads %j as %s", (cells, says, text) => {
    expect(readTitle(cells)).toEqual({ says, text });
  });

  it("needs a label that is known where it fills two cells", () => {
    expect(readTitle(["Mood", "good"])).toBeNull();
    expect(readTitle(["Mood:", "good"])).toBeNull();
  });
});
