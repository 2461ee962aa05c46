import { describe, expect, test } from "vitest";
import { cellText } from "../../src/hosts/cell-text.ts";

describe("a cell as text", () => {
  test.each([
    [151.23456789012, "0.0", "151.23456789012"],
    [1e21, "General", "1e+21"],
    [-3, "General", "-3"],
    [true, "General", "TRUE"],
    ["", "General", ""],
    [null, "General", ""],
    ["7 iron", "@", "7 iron"],
    // Day 1 of 1970 is day 25,569 of the 1900 date system; day 43,831 is 1 January 2020.
    [25_569, "yyyy-mm-dd", "1970-01-01"],
    [43_831, "d mmm yy", "2020-01-01"],
    [43_831.5, "dd/mm/yyyy hh:mm", "2020-01-01 12:00:00"],
    [0.4375, "h:mm AM/PM", "10:30:00"],
    [0.4375, "[h]:mm:ss", "10:30:00"],
    // These letters are text or colour, not codes of a date.
    [12.5, '0.0" yd"', "12.5"],
    [12.5, "0.0\\d", "12.5"],
    [12.5, "[Red]0.0", "12.5"],
    [12.5, "#,##0.00_);[Blue]\\(0.00\\)", "12.5"],
  ])("of %j shown as %j is %j", (value, format, text) => {
    expect(cellText(value, format)).toBe(text);
  });
});
