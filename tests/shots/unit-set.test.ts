import { expect, test } from "vitest";
import { METRICS, metricOf } from "../../src/shots/metrics.ts";
import { showing } from "../../src/shots/showing.ts";
import { displayUnit, UNIT_SETS } from "../../src/shots/unit-set.ts";

test("each set of units shows speeds and carries in its own units", () => {
  const shown = (key: "clubSpeed" | "carry" | "height") =>
    UNIT_SETS.map((units) => displayUnit(metricOf(key), units));
  expect(shown("clubSpeed")).toEqual(["mph", "m/s", "km/h"]);
  expect(shown("carry")).toEqual(["yd", "m", "m"]);
  expect(shown("height")).toEqual(["ft", "m", "m"]);
});

test("kilometres an hour change speeds alone", () => {
  for (const metric of METRICS.filter(({ metric }) => metric !== "m/s"))
    expect(displayUnit(metric, "metric-kmh")).toBe(displayUnit(metric, "metric"));
});

test("100 mph is 160.9344 km/h and 44.704 m/s", () => {
  // A mile is 1609.344 m (international yard and pound agreement, 1959).
  expect(showing(metricOf("clubSpeed"), "metric-kmh")(100)).toBeCloseTo(160.9344, 10);
  expect(showing(metricOf("clubSpeed"), "metric")(100)).toBeCloseTo(44.704, 10);
});
