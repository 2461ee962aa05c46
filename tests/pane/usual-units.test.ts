import { describe, expect, test } from "vitest";
import { rememberUnits, usualUnits } from "../../src/pane/usual-units.ts";

function store() {
  const texts = new Map<string, string>();
  return {
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => void texts.set(key, text),
  };
}

const forbidden = {
  getItem: () => {
    throw new DOMException("forbidden", "SecurityError");
  },
  setItem: () => {
    throw new DOMException("forbidden", "SecurityError");
  },
};

describe("the units that a new workbook begins with", () => {
  test("are those chosen last, whatever the place", () => {
    const kept = store();
    rememberUnits("metric-kmh", kept);
    expect(usualUnits("en-GB", kept)).toBe("metric-kmh");
  });

  test("are those of the place where none were chosen or the browser keeps nothing", () => {
    expect(
      ["en-GB", "en", "de-DE", "sv", "fr-CA", "x!"].map((locale) => usualUnits(locale, store())),
    ).toEqual(["us", "us", "metric", "metric", "us", "us"]);
    rememberUnits("metric", forbidden);
    expect(usualUnits("en-GB", forbidden)).toBe("us");
  });
});
