import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  columnCharacters,
  columnPixels,
  rowPixels,
  rowPoints,
} from "../../../src/hosts/workbench/measures.ts";

describe("measures of the grid", () => {
  it("make 64 pixels of the usual column of 8.43 characters", () => {
    // ECMA-376-1:2016, 18.3.1.13: a column of 8.43 characters is 64 pixels where a digit is 7 pixels wide.
    expect(columnPixels(8.43)).toBeCloseTo(64, 1);
  });

  it("make 20 pixels of the usual row of 15 points, at 96 pixels an inch", () => {
    expect(rowPixels(15)).toBe(20);
  });

  it("come back to the hundredth", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 25_500 }), (hundredths) => {
        expect(columnCharacters(columnPixels(hundredths / 100))).toBe(hundredths / 100);
        expect(rowPoints(rowPixels(hundredths / 100))).toBe(hundredths / 100);
      }),
    );
  });
});
