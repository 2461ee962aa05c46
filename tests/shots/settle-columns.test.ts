import { describe, expect, it } from "vitest";
import type { PlannedColumn } from "../../src/shots/planned-column.ts";
import { settleColumns } from "../../src/shots/settle-columns.ts";

const column = (
  index: number,
  key: PlannedColumn["key"],
  part: Partial<PlannedColumn> = {},
): PlannedColumn => ({
  ...{ index, header: "", key, unit: "yd", unitFrom: "assumed", decimal: ".", leftPositive: false },
  ...part,
});
const unitOf = (cells: readonly string[], key: PlannedColumn["key"] = "carry") => {
  const { unit, unitFrom } = settleColumns(
    [column(0, key)],
    cells.map((cell) => [cell]),
    undefined,
  ).columns[0]!;
  return [unit, unitFrom];
};

describe("settleColumns(planned, rows, decimal), the unit", () => {
  it("is the one that most figures have behind them", () => {
    expect(unitOf(["140 m", "141 yd", "142 m"])).toEqual(["m", "cells"]);
    expect(unitOf(["140 yd", "141 m", "142 m"])).toEqual(["m", "cells"]);
    expect(unitOf(["141 m", "140 yd", "142 yd"])).toEqual(["yd", "cells"]);
  });

  it("is found among the words behind a figure, at their start or end", () => {
    expect(unitOf(["140 m L"])).toEqual(["m", "cells"]);
    expect(unitOf(["140 L m"])).toEqual(["m", "cells"]);
  });

  it("stays the usual one where figures are bare, or have a word or a unit of something else behind them", () => {
    for (const cell of ["140", "140 ", "140 about", "140 rpm", "", "none"])
      expect(unitOf([cell]), cell).toEqual(["yd", "assumed"]);
  });

  it("is left alone in a column of names, and where the heading states it", () => {
    expect(unitOf(["140 m"], "build")).toEqual(["yd", "assumed"]);
    const stated = column(0, "carry", { unitFrom: "header" });
    expect(settleColumns([stated], [["140 m"]], undefined).columns[0]!.unit).toBe("yd");
  });
});

describe("settleColumns(planned, rows, decimal), the mark", () => {
  const carry = [column(0, "carry")];
  const open = Array.from({ length: 7000 }, (_, row) => [String(150 + (row % 9))]);
  const with1 = (at: number, cell: string) => open.map((row, i) => (i === at ? [cell] : row));
  const markOf = (rows: readonly (readonly string[])[]) => settleColumns(carry, rows, undefined).decimal;

  it("is what the fitter says, for every column", () => {
    const said = settleColumns([column(0, "carry"), column(1, "build")], [["150.5", "A"]], ",");
    expect(said.decimal).toBe(",");
    expect(said.columns.map(({ decimal }) => decimal)).toEqual([",", ","]);
  });

  it("comes from each row of a short table, the last one too", () => {
    for (const at of [0, 150, 299]) expect(markOf(with1(at, "150,5").slice(0, 300)), `row ${at}`).toBe(",");
  });

  it("comes from the start, and from rows spread over the rest of a long one", () => {
    // By hand: 100 rows from the start, then every 34.5th: the 100th, the 134th, ... of 7,000 rows.
    expect(markOf(with1(99, "150,5"))).toBe(",");
    expect(markOf(with1(134, "150,5"))).toBe(",");
    expect(markOf(with1(6965, "150,5"))).toBe(",");
  });

  it("is looked for in more rows where the first ones leave it open", () => {
    // Not among the first 300 looked at, but among the first 2,000 of 6,000.
    expect(markOf(with1(1500, "150,5"))).toBe(",");
  });

  it("does not look on where a column has settled it, though another is open", () => {
    // Of the rows from 1,481 to 1,513 none is among those that are looked at first.
    const two = [column(0, "carry"), column(1, "offline")];
    const rows = open.map((row, i) => [row[0]!, i === 0 ? "1.5" : i > 1484 && i < 1511 ? "1,5" : "1"]);
    expect(settleColumns(two, rows, undefined).decimal).toBe(".");
  });
});
