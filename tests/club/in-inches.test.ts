import { expect, it } from "vitest";
import { inInches } from "../../src/club/in-inches.ts";

it("a length is told to a thousandth of an inch, and one that is hardly any as it is", () => {
  expect([38.50000001, 37.0078740157, 0, -3].map(inInches)).toEqual([
    "38.5 in",
    "37.008 in",
    "0 in",
    "-3 in",
  ]);
  expect(inInches(-0.0002)).toBe("-0.0002 in");
});
