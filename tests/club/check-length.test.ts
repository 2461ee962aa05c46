import { describe, expect, test } from "vitest";
import { checkLength } from "../../src/club/check-length.ts";
import { answer, refusal } from "./answer.ts";

const source =
  "Equipment Rules (R&A and USGA), Part 2, Section 1c: at least 18 in and, except for putters, not over 48 in";

describe(`checkLength(length, isPutter), by ${source}`, () => {
  test.each([
    [18, false, true],
    [17.99, false, false],
    [48, false, true],
    [48.01, false, false],
    [52, true, true],
    [17, true, false],
  ])("%d inches, putter %s: conforms %s", (length, isPutter, conforms) => {
    const check = answer(checkLength(length, isPutter));
    expect(check.conforms).toBe(conforms);
    expect(check.message).toContain("Part 2, Section 1c");
  });

  test("refuses a length that is none", () => {
    expect(refusal(checkLength(Number.NaN))).toContain("length");
    expect(refusal(checkLength(0))).toContain("length");
  });
});
