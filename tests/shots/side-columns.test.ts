import { describe, expect, it } from "vitest";
import type { FigureColumn } from "../../src/shots/figure-column.ts";
import { sideColumns, sidedBy, withSide } from "../../src/shots/side-columns.ts";

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

describe("sidedBy(index, figures)", () => {
  const figure = (index: number, key: FigureColumn["key"]) => ({ index, key }) as FigureColumn;
  const offline = figure(1, "offline");
  const path = figure(3, "path");
  const carry = figure(2, "carry");

  it("is the figure left of the sides, else the one right of them, else the offline one", () => {
    expect(sidedBy(2, [path, offline])).toBe(offline);
    expect(sidedBy(4, [offline, path])).toBe(path);
    expect(sidedBy(2, [path, carry])).toBe(path);
    expect(sidedBy(0, [path, offline])).toBe(offline);
    expect(sidedBy(9, [path, offline])).toBe(offline);
    expect(sidedBy(9, [path])).toBeUndefined();
  });

  it("is never one that has no left", () => {
    expect(sidedBy(3, [carry])).toBeUndefined();
    expect(sidedBy(3, [carry, offline])).toBe(offline);
    expect(sidedBy(2, [figure(1, "strikeX")])).toBeUndefined();
  });
});

describe("a column of sides", () => {
  it("may stand under the heading of what it gives a sign to, with gaps around its letters", () => {
    expect(
      sideColumns(
        ["Offline", "Direction", "Carry", "Club"],
        [
          [" L ", "r", "L", "L"],
          ["", " ", "", ""],
        ],
      ),
    ).toEqual([0, 1]);
  });

  it("is none without a side in it, or without a row", () => {
    expect(sideColumns(["L/R", ""], [["", "-"]])).toEqual([]);
    expect(sideColumns(["L/R"], [[]])).toEqual([]);
    expect(sideColumns(["L/R"], [])).toEqual([]);
  });

  it("is judged by its first 300 rows", () => {
    const rows = Array.from({ length: 301 }, () => ["L"]);
    expect(sideColumns(["L/R"], [...rows.slice(0, 300), ["3"]])).toEqual([0]);
    expect(sideColumns(["L/R"], [...rows.slice(0, 299), ["3"]])).toEqual([]);
  });

  it("leaves a figure of 0 and a missing one as they are", () => {
    expect(withSide(0, "R", "offline")).toBe(0);
    expect(withSide(Number.NaN, "L", "offline")).toBeNaN();
    expect(withSide(3, "n/a", "offline")).toBe(3);
  });
});
