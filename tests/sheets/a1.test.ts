import { describe, expect, it } from "vitest";
import { areaName, cellName, columnName, sheetAreaName, sheetName } from "../../src/sheets/a1.ts";

describe("names in the spreadsheet's own notation", () => {
  it("columnName(column) counts A to Z, then AA", () => {
    // By counting: 26 letters, then 26 x 26 pairs from AA to ZZ.
    expect([0, 25, 26, 51, 52, 701, 702].map(columnName)).toEqual(["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]);
  });

  it("cellName(row, column, fixed) counts rows from 1 and marks what must not move", () => {
    expect(cellName(2, 1)).toBe("B3");
    expect(cellName(2, 1, "column")).toBe("$B3");
    expect(cellName(2, 1, "row")).toBe("B$3");
    expect(cellName(2, 1, "both")).toBe("$B$3");
  });

  it("areaName(area, fixed) names both corners, and a single cell once", () => {
    expect(areaName({ row: 2, column: 1, rows: 8, columns: 3 })).toBe("B3:D10");
    expect(areaName({ row: 2, column: 1, rows: 8, columns: 3 }, "both")).toBe("$B$3:$D$10");
    expect(areaName({ row: 2, column: 1, rows: 1, columns: 1 })).toBe("B3");
    expect(areaName({ row: 2, column: 1, rows: 1, columns: 3 })).toBe("B3:D3");
    expect(areaName({ row: 2, column: 1, rows: 8, columns: 1 })).toBe("B3:B10");
  });

  it("sheetName(name) and sheetAreaName(at) quote every name, apostrophes doubled", () => {
    expect(sheetName("Ann's 'A'")).toBe("'Ann''s ''A'''");
    expect(sheetAreaName({ sheet: "Shots 2", area: { row: 2, column: 1, rows: 38, columns: 1 } })).toBe(
      "'Shots 2'!$B$3:$B$40",
    );
  });
});
