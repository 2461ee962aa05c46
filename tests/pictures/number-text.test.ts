import { describe, expect, it } from "vitest";
import { numberText } from "../../src/pictures/number-text.ts";

// What a spreadsheet shows for these format codes: ECMA-376-1:2016, 18.8.31 (numFmts).
describe("a number on an axis", () => {
  it.each([
    [12.345, "0", "12"],
    [12.345, "0.0", "12.3"],
    [1234.5, "#,##0", "1,235"],
    [1234.5, "0.00", "1234.50"],
    [0.25, "0%", "25%"],
    [-3, "0", "-3"],
    [0.5, "General", "0.5"],
  ])("shows %d by the format %s as %s", (value, format, shown) => {
    expect(numberText(value, format)).toBe(shown);
  });
});
