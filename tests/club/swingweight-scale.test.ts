import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { swingweightCode } from "../../src/club/swingweight-code.ts";
import { swingweightDifference } from "../../src/club/swingweight-difference.ts";
import { swingweightMoment } from "../../src/club/swingweight-moment.ts";
import { swingweightPoints } from "../../src/club/swingweight-points.ts";
import { isProblem } from "../../src/outcome/problem.ts";

const source =
  "the 14-inch scale's table: inch-ounces a code (letters and points common practice; anchor from memory)";
const table: [string, number][] = [
  ["A0", 161],
  ["A9", 176.75],
  ["B0", 178.5],
  ["B5", 187.25],
  ["C0", 196],
  ["C9", 211.75],
  ["D0", 213.5],
  ["D1", 215.25],
  ["D2", 217],
  ["D9", 229.25],
  ["E0", 231],
  ["E5", 239.75],
  ["F0", 248.5],
  ["F7", 260.75],
  ["G0", 266],
  ["G9", 281.75],
];

describe(`swingweight codes agree with ${source}`, () => {
  test.each(table)("%s is %d inch-ounces, both ways", (code, moment) => {
    expect(swingweightMoment(code)).toBe(moment);
    expect(swingweightCode(moment)).toBe(`${code}.0`);
  });
});

describe("swingweightMoment(code)", () => {
  test("takes either case, blanks and decimals", () => {
    expect(swingweightMoment(" d2.4 ")).toBeCloseTo(217.7, 12);
    expect(swingweightMoment("D2,4")).toBeCloseTo(217.7, 12);
  });

  test.each(["", "H0", "D10", "D-1", "2", "DD2", "D2.3.4", "D"])(
    'refuses "%s" and says what a code is',
    (code) => {
      expect(swingweightMoment(code)).toMatchObject({
        kind: "invalid",
        message: expect.stringContaining("letter A to G"),
      });
    },
  );
});

describe("swingweightCode(moment)", () => {
  test("rolls 9.96 points over to the next letter", () => {
    expect(swingweightCode(213.5 + 9.96 * 1.75)).toBe("E0.0");
    expect(swingweightCode(213.5 + 9.94 * 1.75)).toBe("D9.9");
  });

  test("rounds halves of a tenth up, whatever the binary fractions do", () => {
    for (let tenth = 0; tenth < 699; tenth += 1) {
      const moment = 161 + 1.75 * (tenth / 10 + 0.05);
      const next = tenth + 1;
      const expected = `${"ABCDEFG"[Math.floor(next / 100)]}${((next % 100) / 10).toFixed(1)}`;
      expect(swingweightCode(moment)).toBe(expected);
    }
  });

  test("gives the moment where it lies beyond the scale", () => {
    expect(swingweightCode(160.9)).toMatchObject({ message: expect.stringContaining("160.90") });
    expect(swingweightCode(283.5)).toMatchObject({ message: expect.stringContaining("283.50") });
    expect(swingweightCode(Number.NaN)).toMatchObject({ kind: "invalid" });
  });

  test("gives every code of the scale its own moment back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 699 }), (tenths) => {
        const code = `${"ABCDEFG"[Math.floor(tenths / 100)]}${((tenths % 100) / 10).toFixed(1)}`;
        const moment = swingweightMoment(code);
        expect(isProblem(moment) ? moment : swingweightCode(moment)).toBe(code);
      }),
    );
  });
});

describe("swingweightDifference(from, to) and swingweightPoints(moment)", () => {
  test("count points over the letters, signed", () => {
    expect(swingweightDifference("C9", "D2")).toBe(3);
    expect(swingweightDifference("D2", "C9")).toBe(-3);
    expect(swingweightDifference("D2.3", "D4.1")).toBe(1.8);
    expect(swingweightDifference("D2.3", "D2.1")).toBe(-0.2);
    expect(swingweightPoints(213.5)).toBe(30);
    expect(swingweightPoints(159.25)).toBe(-1);
  });

  test("name the code that is wrong", () => {
    expect(swingweightDifference("D2", "X9")).toMatchObject({ message: expect.stringContaining('"X9"') });
    expect(swingweightDifference("X8", "D2")).toMatchObject({ message: expect.stringContaining('"X8"') });
  });
});

test("a code keeps all its decimals, and one below the scale has no letter", () => {
  // By hand: 10 points a letter, A0.0 at 161 inch-ounces, 1.75 a point.
  expect(swingweightMoment("D2.25")).toBeCloseTo(161 + 32.25 * 1.75, 12);
  expect(swingweightMoment(" b 0,125 ")).toBeCloseTo(161 + 10.125 * 1.75, 12);
  expect(swingweightCode(160)).toMatchObject({ kind: "unavailable" });
  expect(swingweightCode(-500)).toMatchObject({ kind: "unavailable" });
});
