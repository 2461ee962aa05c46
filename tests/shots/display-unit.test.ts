import { describe, expect, it } from "vitest";
import { displayUnit, shownIn } from "../../src/shots/display-unit.ts";
import { METRICS } from "../../src/shots/metrics.ts";

describe("shownIn(key, value, set)", () => {
  // Exact by definition: NIST Special Publication 811 (2008), appendix B.8.
  it("shows yards, feet and miles an hour in metres and metres a second", () => {
    expect(shownIn("carry", 100, "metric")).toBe(91.44);
    expect(shownIn("height", 100, "metric")).toBe(30.48);
    expect(shownIn("ballSpeed", 100, "metric")).toBe(44.704);
    expect(shownIn("carry", 100, "us")).toBe(100);
  });

  it("leaves what has one unit as it is, and a missing figure missing", () => {
    for (const { key, unit, metric } of METRICS) {
      if (unit === metric) expect(shownIn(key, 12.3, "metric")).toBe(12.3);
      else expect(shownIn(key, 12.3, "metric")).not.toBe(12.3);
      expect(shownIn(key, Number.NaN, "metric")).toBeNaN();
    }
    expect([displayUnit("carry", "us"), displayUnit("carry", "metric")]).toEqual(["yd", "m"]);
  });
});
