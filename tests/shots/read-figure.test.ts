import { describe, expect, it } from "vitest";
import { markedNumber } from "../../src/shots/marked-number.ts";
import type { MetricKey } from "../../src/shots/metrics.ts";
import { readFigure } from "../../src/shots/read-figure.ts";

describe("readFigure(cell, key, decimal)", () => {
  it.each<[string, MetricKey, "." | ",", number, string]>([
    ["L12.3", "offline", ".", -12.3, ""],
    ["L 12.3", "offline", ".", -12.3, ""],
    ["12.3L", "offline", ".", -12.3, ""],
    ["12.3 L", "offline", ".", -12.3, ""],
    ["12.3R", "offline", ".", 12.3, ""],
    ["R 4", "offline", ".", 4, ""],
    ["12.3 left", "offline", ".", -12.3, ""],
    ["left 12.3", "offline", ".", -12.3, ""],
    ["Right: 4", "offline", ".", 4, ""],
    ["12,3 links", "offline", ",", -12.3, ""],
    ["G 4,5", "offline", ",", -4.5, ""],
    ["12.3 yd L", "offline", ".", -12.3, "yd"],
    ["12.3 L yd", "offline", ".", -12.3, "yd"],
    ["-12.3 L", "offline", ".", -12.3, ""],
    ["+4 R", "offline", ".", 4, ""],
    ["3.2°R", "direction", ".", 3.2, "degrees"],
    ["14,2°", "launch", ",", 14.2, "degrees"],
    ["2,450 rpm", "spin", ".", 2450, "rpm"],
    ["152.3 yd", "carry", ".", 152.3, "yd"],
    ["152.3 yds.", "carry", ".", 152.3, "yd"],
    ["\u22124.5", "attack", ".", -4.5, ""],
    ["– 4.5", "attack", ".", -4.5, ""],
    ["4.5 down", "attack", ".", -4.5, ""],
    ["(4.5)", "attack", ".", -4.5, ""],
    ["8 mm toe", "strikeX", ".", 8, "mm"],
    ["heel 8", "strikeX", ".", -8, ""],
    ["3 low", "strikeY", ".", -3, ""],
    ["0 L", "offline", ".", 0, ""],
    ["2.45E+03", "spin", ".", 2450, ""],
    ["102'", "height", ".", 102, "ft"],
  ])("reads %j as a figure of %s with decimal %j", (cell, key, decimal, value, unit) => {
    expect(readFigure(cell, key, decimal)).toMatchObject({ value, unit, otherMark: false });
  });

  it("reads a figure that makes sense with the other mark only, and says so", () => {
    expect(readFigure("152,3", "carry", ".")).toMatchObject({ value: 152.3, otherMark: true });
  });

  it.each<[string, MetricKey]>([
    ["+4 L", "offline"],
    ["-4 R", "offline"],
    ["L 4 R", "offline"],
    ["L 152", "carry"],
    ["152 apples", "carry"],
    ["1.2.3", "carry"],
    ["5 1/2", "carry"],
    ["10:30", "carry"],
    ["12 L 5 R", "offline"],
    ["left", "offline"],
    ["1,23,456", "spin"],
    ["--5", "attack"],
  ])("answers null for %j as %s", (cell, key) => {
    expect(readFigure(cell, key, ".")).toBeNull();
  });
});

describe("markedNumber(text, decimal)", () => {
  it.each<[string, "." | ",", number]>([
    ["1.234,5", ",", 1234.5],
    ["1,234.5", ".", 1234.5],
    ["1 234,5", ",", 1234.5],
    ["1'234.5", ".", 1234.5],
    ["1’234’567", ".", 1_234_567],
    ["1,234", ".", 1234],
    ["1,234", ",", 1.234],
  ])("reads %j with decimal %j", (text, decimal, value) => {
    expect(markedNumber(text, decimal)).toBe(value);
  });

  it("answers NaN where thousands are not parted in threes by one mark", () => {
    for (const text of ["12,34", "1,2345", "1,234 567", "1.2.3", ",5"])
      expect(markedNumber(text, ".")).toBeNaN();
  });
});
