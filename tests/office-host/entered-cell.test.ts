import { describe, expect, test } from "vitest";
import { enteredCell } from "./entered-cell.ts";

// The documented rules of typing into a cell: an apostrophe makes text, "=" "+" "-" "@" begin a formula, and what
// reads as a number, percentage, date, time or truth value becomes one.
describe("an entry", () => {
  test.each([
    "=x",
    "+1+1",
    "-2+3",
    "@x",
    "007",
    "TRUE",
    "Jan 5",
    "1/2",
    "10:30",
    "50%",
    "1E5",
    "'tis",
    " 7 ",
  ])("of %j behind an apostrophe stays that text", (text) => {
    expect(enteredCell(`'${text}`)).toEqual({ value: text, quoted: true });
  });

  test.each([
    ["007", 7],
    ["1E5", 100_000],
    ["-2.5", -2.5],
    ["+3", 3],
    ["50%", 0.5],
    ["1,234.5", 1234.5],
    ["$12", 12],
    [".5", 0.5],
    ["TRUE", true],
    ["false", false],
  ])("of %j alone becomes %j", (text, value) => {
    expect(enteredCell(text)).toEqual({ value });
  });

  test.each(["=A1", "+1+1", "-2+3", "@x"])("of %j alone becomes a formula", (text) => {
    expect(enteredCell(text)?.formula).toMatch(/^=/);
  });

  test.each(["Jan 5", "5 Jan", "Jan-05", "5-Jan-2026", "1/2", "2026-05-14", "3-4", "10:30", "10:30:15 pm"])(
    "of %j alone becomes a date or time",
    (text) => {
      expect(enteredCell(text)?.value).toBeTypeOf("number");
    },
  );

  test.each(["7 iron", "a", "=", "1.2.3", "12abc", "January gale"])("of %j stays text", (text) => {
    expect(enteredCell(text)).toEqual({ value: text });
  });

  test("of null leaves the cell alone and of nothing empties it", () => {
    expect(enteredCell(null)).toBeUndefined();
    expect(enteredCell("")).toBeNull();
  });
});
