import { describe, expect, it } from "vitest";
import { sideColumns, withSide } from "../../src/shots/side-columns.ts";

describe("sideColumns(header, rows)", () => {
  it("finds a column of nothing but sides, under a heading that speaks of them", () => {
    const rows = [
      ["12", "L", "R"],
      ["3", "right", "R"],
      ["0", "", "R"],
    ];
    expect(sideColumns(["Offline", "L/R", "Hand"], rows)).toEqual([1]);
  });

  it("leaves a column alone that holds a figure", () => {
    expect(
      sideColumns(
        ["Carry", "Side"],
        [
          ["150", "L"],
          ["151", "3 R"],
        ],
      ),
    ).toEqual([]);
  });
});

describe("withSide(value, side, key)", () => {
  it("gives a figure the sign of its side", () => {
    expect(withSide(12, " L ", "offline")).toBe(-12);
    expect(withSide(-12, "left", "offline")).toBe(-12);
    expect(withSide(12, "R", "offline")).toBe(12);
    expect(withSide(0, "L", "offline")).toBe(0);
    expect(withSide(12, "", "offline")).toBe(12);
  });

  it("answers null where sign and side contradict each other, or the side is none", () => {
    expect(withSide(-12, "R", "offline")).toBeNull();
    expect(withSide(12, "up", "offline")).toBeNull();
  });
});
