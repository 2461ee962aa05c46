import { expect, it } from "vitest";
import { headingKey } from "../../src/sheets/heading-key.ts";

it("headingKey(heading) is the same whatever case and blanks", () => {
  expect(headingKey("  Ball \t  SPEED ")).toBe("ball speed");
  expect(headingKey("Ballspeed")).not.toBe(headingKey("Ball speed"));
});
