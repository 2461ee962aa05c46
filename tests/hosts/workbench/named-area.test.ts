import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { namedArea } from "../../../src/hosts/workbench/named-area.ts";
import { sheetAreaName } from "../../../src/sheets/a1.ts";

describe("a name that stands for an area", () => {
  it("is read back from every reference that a plan can write", () => {
    const count = fc.integer({ min: 1, max: 400 });
    const place = fc.record({ row: fc.nat(1e6), column: fc.nat(16_000), rows: count, columns: count });
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), place, (sheet, area) => {
        expect(namedArea("Carry", sheetAreaName({ sheet, area }))).toEqual([
          { name: "Carry", at: { sheet, area } },
        ]);
      }),
    );
  });

  it("is read without quotes and dollars too", () => {
    const area = { row: 1, column: 27, rows: 1, columns: 1 };
    expect(namedArea("One", "=Shots!AB2")).toEqual([{ name: "One", at: { sheet: "Shots", area } }]);
  });

  it("is nothing where the name stands for a formula", () => {
    expect(namedArea("Half", "=1/2")).toEqual([]);
    expect(namedArea("Both", "Shots!A1,Shots!B1")).toEqual([]);
  });
});
