import { expect, test } from "vitest";
import { unitChoices } from "../../src/pane/column-choices.ts";

test("the units to choose from have the column's own among them, however rare", () => {
  expect(unitChoices("clubSpeed", "mph")).toEqual(["mph", "m/s", "km/h"]);
  expect(unitChoices("clubSpeed", "ft/s")).toContain("ft/s");
  expect(unitChoices("offline", "cm")).toContain("cm");
  expect(unitChoices("launch", "degrees")).toEqual([]);
});
