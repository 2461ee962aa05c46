import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../src/outcome/problem.ts";
import { convert } from "../../src/units/convert.ts";
import { factor } from "../../src/units/factor.ts";
import { UNIT_NAMES } from "../../src/units/unit-names.ts";

// Exact by definition: NIST Special Publication 811 (2008), appendix B.8: yard 0.9144 m, foot 0.3048 m,
// inch 25.4 mm, mile per hour 0.44704 m/s and 1.609344 km/h.
const DEFINED: [string, string, number][] = [
  ["yd", "m", 0.9144],
  ["ft", "m", 0.3048],
  ["in", "mm", 25.4],
  ["in", "cm", 2.54],
  ["mph", "m/s", 0.44704],
  ["mph", "km/h", 1.609344],
  ["m/s", "km/h", 3.6],
  ["yd", "ft", 3],
  ["cm", "mm", 10],
  ["krpm", "rpm", 1000],
];

describe("factor(from, to)", () => {
  it.each(DEFINED)(
    "%s to %s multiplies by the defining figure, and divides by it the other way",
    (from, to, size) => {
      expect(factor(from, to)).toEqual({ times: size, over: 1 });
      expect(factor(to, from)).toEqual({ times: 1, over: size });
    },
  );
});

describe("convert(value, from, to)", () => {
  it("turns a figure there and back within the last digits", () => {
    const units = fc.constantFrom(...UNIT_NAMES);
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), units, units, (value, a, b) => {
        fc.pre(a.dimension === b.dimension);
        const there = convert(value, a.name, b.name) as number;
        const back = convert(there, b.name, a.name) as number;
        expect(Math.abs(back - value)).toBeLessThanOrEqual(5e-16 * value);
      }),
    );
  });

  it("leaves a figure in its own unit exactly as it is", () => {
    for (const unit of UNIT_NAMES) expect(convert(152.3, unit.name, unit.name)).toBe(152.3);
  });

  it("answers a problem for an unknown unit, another dimension and what is no number", () => {
    for (const [value, from, to] of [
      [1, "furlong", "m"],
      [1, "m", "stone"],
      [1, "mph", "m"],
      [Number.NaN, "m", "yd"],
      [Number.MAX_VALUE, "in", "mm"],
    ] as const) {
      expect(isProblem(convert(value, from, to))).toBe(true);
    }
  });
});
