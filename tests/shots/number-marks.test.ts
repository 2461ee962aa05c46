import { describe, expect, it } from "vitest";
import { columnMark, markEvidence, tableMark } from "../../src/shots/number-marks.ts";

describe("markEvidence(cells, key, unit)", () => {
  it("counts what can only be a point or only a comma, and what could be both", () => {
    const found = markEvidence(["1,234.5", "12,5", "12.5", "150", "0,123", "1,234"], "spin", "rpm");
    expect(found).toEqual({ point: 2, comma: 2, unclear: 1, pointFits: 1, commaFits: 0 });
  });
  it("takes one or two digits, and more than three, behind a mark for decimals at one look", () => {
    const count = (cell: string) => markEvidence([cell], "carry", "yd");
    for (const cell of ["1.5", "-12.25", "+150.1234", "123456789012345.5"])
      expect(count(cell), cell).toMatchObject({ point: 1, comma: 0, unclear: 0 });
    for (const cell of ["1,5", "150,1234"])
      expect(count(cell), cell).toMatchObject({ point: 0, comma: 1, unclear: 0 });
    for (const cell of ["150", "", "n/a", ".", "1.2.3"])
      expect(count(cell), cell).toMatchObject({ point: 0, comma: 0, unclear: 0 });
  });

  it("takes three digits behind a mark as open, unless a nought or two marks settle it", () => {
    const count = (cell: string) => markEvidence([cell], "spin", "rpm");
    expect(count("2.450")).toMatchObject({ unclear: 1, point: 0, comma: 0 });
    expect(count("0.450")).toMatchObject({ unclear: 0, point: 1, comma: 0 });
    expect(count("0,450")).toMatchObject({ unclear: 0, point: 0, comma: 1 });
    expect(count("1,234,567")).toMatchObject({ unclear: 0, point: 1 });
    expect(count("1.234.567")).toMatchObject({ unclear: 0, comma: 1 });
    expect(count("1.234,5")).toMatchObject({ unclear: 0, comma: 1 });
  });

  it("asks what a shot can have on either side, its bounds included", () => {
    // By METRICS: a carry of 0 to 450 yd.
    const fitting = (cell: string) => markEvidence([cell], "carry", "yd");
    expect(fitting("1,234")).toMatchObject({ pointFits: 0, commaFits: 1 });
    expect(fitting("-1,234")).toMatchObject({ unclear: 1, pointFits: 0, commaFits: 1 });
    expect(markEvidence(["-1,234"], "spin", "rpm")).toMatchObject({ pointFits: 1, commaFits: 0 });
    expect(markEvidence(["1,234"], "smash", "")).toMatchObject({ pointFits: 0, commaFits: 1 });
    expect(markEvidence(["1,234"], "carry", "rpm")).toMatchObject({ pointFits: 0, commaFits: 0 });
  });
});

describe("tableMark(columns) and columnMark(column, table)", () => {
  const spin = markEvidence(["2,450", "2,512"], "spin", "rpm");
  const launch = markEvidence(["16,2", "15,1"], "launch", "degrees");
  const longLaunch = markEvidence(["16,234", "15,122"], "launch", "degrees");

  it("believes clear cells over what a shot can have", () => {
    expect(tableMark([spin, launch])).toBe(",");
  });

  it("takes a doubtful column by what a shot can have", () => {
    expect(tableMark([spin])).toBe(".");
    expect(tableMark([longLaunch])).toBe(",");
    expect(columnMark(spin, ",")).toBe(".");
    expect(columnMark(longLaunch, ".")).toBe(",");
  });

  it("takes the point where nothing is said", () => {
    expect(tableMark([])).toBe(".");
  });

  it("lets clear cells outvote each other, and what fits decide a draw", () => {
    const evidence = (part: object) => ({
      point: 0,
      comma: 0,
      unclear: 0,
      pointFits: 0,
      commaFits: 0,
      ...part,
    });
    expect(tableMark([evidence({ point: 2 }), evidence({ comma: 3 })])).toBe(",");
    expect(tableMark([evidence({ point: 3 }), evidence({ comma: 2 })])).toBe(".");
    expect(tableMark([evidence({ point: 2, comma: 2, commaFits: 1 })])).toBe(",");
    expect(tableMark([evidence({ point: 2, comma: 2, pointFits: 1 })])).toBe(".");
    expect(tableMark([evidence({ point: 1, commaFits: 9 })])).toBe(".");
  });

  it("leaves a column to the table unless most of its own figures fit the other mark only", () => {
    const column = (part: object) => ({
      point: 0,
      comma: 0,
      unclear: 4,
      pointFits: 0,
      commaFits: 4,
      ...part,
    });
    expect(columnMark(column({}), ".")).toBe(",");
    expect(columnMark(column({ point: 1 }), ".")).toBe(".");
    expect(columnMark(column({ comma: 1 }), ".")).toBe(",");
    expect(columnMark(column({ unclear: 0 }), ".")).toBe(".");
    expect(columnMark(column({ commaFits: 3 }), ".")).toBe(".");
    expect(columnMark(column({ pointFits: 1 }), ".")).toBe(",");
    expect(columnMark(column({ pointFits: 2 }), ".")).toBe(".");
    expect(columnMark(column({ pointFits: 4, commaFits: 0 }), ",")).toBe(".");
    expect(columnMark(column({ pointFits: 4, commaFits: 0, comma: 1 }), ",")).toBe(",");
  });

  it("weighs what a shot can have in the column's own unit", () => {
    expect(markEvidence(["2,450"], "spin", "krpm")).toMatchObject({ pointFits: 0, commaFits: 1 });
  });
});
