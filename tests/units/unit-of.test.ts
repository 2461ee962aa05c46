import { describe, expect, it } from "vitest";
import { UNIT_NAMES } from "../../src/units/unit-names.ts";
import { unitOf } from "../../src/units/unit-of.ts";

describe("unitOf(spelling)", () => {
  // Spellings as met in tables of shots: common practice, no source.
  it.each([
    ["yds", "yd"],
    ["Yards", "yd"],
    ["meters", "m"],
    ["KM/H", "km/h"],
    ["kph", "km/h"],
    ["mps", "m/s"],
    ["m / s", "m/s"],
    ["Feet", "ft"],
    ["in.", "in"],
    ["°", "degrees"],
    ["Deg.", "degrees"],
    ["1000 rpm", "krpm"],
    ["U/min", "rpm"],
    ["sec.", "s"],
  ])("reads %s as %s", (spelling, name) => {
    expect(unitOf(spelling)?.name).toBe(name);
  });

  it("knows no unit by a word that is none, not even one that every object has", () => {
    for (const word of ["", "carry", "constructor", "__proto__", "g"]) expect(unitOf(word)).toBeUndefined();
  });

  it("gives no spelling to two units", () => {
    const all = UNIT_NAMES.flatMap((unit) => [...new Set([unit.name, ...unit.spellings])]);
    expect(new Set(all).size).toBe(all.length);
  });
});
