import { describe, expect, it } from "vitest";
import { columnMark, markEvidence, tableMark } from "../../src/shots/number-marks.ts";

describe("markEvidence(cells, key, unit)", () => {
  it("counts what can only be a point or only a comma, and what could be both", () => {
    const found = markEvidence(["1,234.5", "12,5", "12.5", "150", "0,123", "1,234"], "spin", "rpm");
    expect(found).toEqual({ point: 2, comma: 2, unclear: 1, pointFits: 1, commaFits: 0 });
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

  it("weighs what a shot can have in the column's own unit", () => {
    expect(markEvidence(["2,450"], "spin", "krpm")).toMatchObject({ pointFits: 0, commaFits: 1 });
  });
});
