import { describe, expect, it } from "vitest";
import { displaySession, headingOf, numberFormat, unitText } from "../../src/sheets/display-session.ts";
import { metricOf } from "../../src/shots/metrics.ts";
import { smallSession } from "./small-session.ts";

describe("displaySession(session)", () => {
  it("leaves yards and miles an hour alone", () => {
    const session = smallSession();
    expect(displaySession(session)).toBe(session);
  });

  it("turns every figure into the unit that is shown, and leaves what has none", () => {
    const shown = displaySession({ ...smallSession(), units: "metric" });
    // A yard is 0.9144 m exactly: international yard and pound agreement of 1959.
    expect(shown.table.values.get("carry")![0]).toBeCloseTo(150 * 0.9144, 9);
    expect(shown.table.values.get("launch")![0]).toBe(18);
    expect([...shown.table.values.keys()]).toEqual([...smallSession().table.values.keys()]);
    expect([shown.title, shown.table.build]).toEqual(["Small", smallSession().table.build]);
  });
});

describe("how figures are headed and shown", () => {
  it("headingOf(metric, units) has the unit in brackets, where there is one", () => {
    expect(headingOf(metricOf("carry"), "us")).toBe("Carry (yd)");
    expect(headingOf(metricOf("carry"), "metric")).toBe("Carry (m)");
    expect(headingOf(metricOf("smash"), "us")).toBe("Smash factor");
  });

  it("unitText(metric, units) writes degrees as a sign", () => {
    expect([unitText(metricOf("launch"), "us"), unitText(metricOf("spin"), "us")]).toEqual(["°", "rpm"]);
  });

  it("numberFormat(decimals, signed) has so many digits behind the mark, and a sign for each side of 0 where asked", () => {
    expect([numberFormat(0), numberFormat(2)]).toEqual(["0", "0.00"]);
    expect([numberFormat(0, true), numberFormat(1, true)]).toEqual(["+0;-0;0", "+0.0;-0.0;0.0"]);
  });
});
