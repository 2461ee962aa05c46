import Qty from "js-quantities";
import { expect, test } from "vitest";
import { unitSystem } from "../../../src/flight/cells/flight-units.ts";
import { UNIT_SIZES } from "../../../src/flight/cells/unit-sizes.ts";
import { answer } from "../../club/answer.ts";

test.each(Object.entries(UNIT_SIZES))("one %s is %d in the SI, as the units library has it", (unit, size) => {
  expect(Qty(1, unit).baseScalar).toBeCloseTo(size, 12);
});

test("32 degrees F is 0 degrees C and 212 is 100, by definition of the scales", () => {
  const { celsius } = answer(unitSystem("us"));
  expect([celsius(32), celsius(212)]).toEqual([0, 100]);
});

test("a unit system is known with blanks around it and in capitals, and nothing but a word names one", () => {
  expect(unitSystem(" SI ")).toMatchObject({ speed: "m/s" });
  expect(unitSystem(7)).toMatchObject({ message: 'units should be "us" or "si", not "7"' });
});
