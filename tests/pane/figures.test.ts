import { describe, expect, test } from "vitest";
import { displayOf, sideOf } from "../../src/pane/display.ts";
import { figuresFor } from "../../src/pane/figures.ts";

const british = figuresFor("en-GB");
// German writes a decimal comma and points for thousands (Unicode CLDR, numbers of locale de).
const german = figuresFor("de-DE");

describe("figures of a place", () => {
  test("are written with its marks and a true minus sign", () => {
    expect(british.show(6250.4, 0)).toBe("6,250");
    expect(german.show(6250.4, 1)).toBe("6.250,4");
    expect(british.show(-3.25, 1)).toBe("\u22123.3");
  });

  test("never show a minus zero", () => {
    expect(british.show(-0.04, 1)).toBe("0.0");
  });

  test("are read with either decimal mark, and anything else is no number", () => {
    expect([british.read("36,75"), german.read(" 36.75 "), british.read("\u22121.5")]).toEqual([
      36.75, 36.75, -1.5,
    ]);
    for (const wrong of ["", "12 in", "1.2.3", "Infinity", "1e3"]) expect(british.read(wrong)).toBeNaN();
  });

  test("are shown in the units chosen", () => {
    // 1 yd = 0.9144 m and 1 mph = 0.44704 m/s exactly (international yard and pound agreement, 1959).
    expect(displayOf("carry", "us", british).full(150)).toBe("150.0\u202fyd");
    expect(displayOf("carry", "metric", british).full(150)).toBe("137.2\u202fm");
    expect(displayOf("clubSpeed", "metric", german).full(100)).toBe("44,7\u202fm/s");
    expect(displayOf("launch", "metric", german).full(17.25)).toMatch(/^17,[23]\u00b0$/);
  });

  test("name the side in words", () => {
    const offline = displayOf("offline", "us", british);
    expect([4.52, -4.52, 0.02].map((side) => sideOf(offline, side))).toEqual([
      "4.5\u202fyd right",
      "4.5\u202fyd left",
      "on line",
    ]);
  });
});
