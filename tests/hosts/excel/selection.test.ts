import { beforeEach, describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import type { Area } from "../../../src/sheets/plan.ts";
import { officeHost } from "../../office-host/office-host.ts";
import type { Service } from "../../office-host/service.ts";
import { cellKey } from "../../office-host/workbook.ts";

const area = (row: number, column: number, rows: number, columns: number): Area => ({
  row,
  column,
  rows,
  columns,
});
let host: Service;

beforeEach(async () => {
  host = officeHost();
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    sheet.getRange("B2:D4").formulas = [
      ["Club", "Carry", "Time"],
      ["'7 iron", 151.23456789012, 45_791.4375],
      ["two\nlines", "'=x", 45_792],
    ];
    sheet.getRange("C3:C4").numberFormat = "0.0" as unknown as string[][];
    sheet.getRange("D3:D4").numberFormat = "d/m/yyyy hh:mm" as unknown as string[][];
    await context.sync();
  });
});

describe("the selection", () => {
  test("comes as tab-separated text with figures in full and times as times", async () => {
    host.workbook.selection = [area(1, 1, 3, 3)];
    // 14 May 2025 is day 45,791 of the 1900 date system; 0.4375 of a day is 10:30.
    expect(await excelHost().selection()).toBe(
      "Club\tCarry\tTime\n7 iron\t151.23456789012\t2025-05-14 10:30:00\n" +
        '"two\nlines"\t=x\t2025-05-15 00:00:00',
    );
  });

  test("of whole columns is read only where something stands", async () => {
    host.workbook.selection = [area(0, 1, 1_048_576, 1)];
    expect(await excelHost().selection()).toBe('Club\n7 iron\n"two\nlines"');
  });

  test("of several areas is read by its first", async () => {
    host.workbook.selection = [area(1, 2, 1, 2), area(1, 1, 1, 1)];
    expect(await excelHost().selection()).toBe("Carry\tTime");
  });

  test("of one cell is read as the table around it", async () => {
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("G9").values = [["far away"]];
      await context.sync();
    });
    host.workbook.selection = [area(2, 2, 1, 1)];
    expect(await excelHost().selection()).toMatch(/^Club\tCarry\tTime\n.*\n.*\n.*$/);
    expect(await excelHost().selection()).not.toContain("far away");
  });

  test("of one cell in an empty place is read as all that is used on the sheet", async () => {
    host.workbook.selection = [area(40, 8, 1, 1)];
    expect(await excelHost().selection()).toMatch(/^Club\tCarry\tTime\n/);
  });

  test("of sixty thousand rows is read in pieces that the service hands out", {
    timeout: 60_000,
  }, async () => {
    const rows = 60_000;
    const { cells } = host.workbook.sheets[0]!;
    cells.clear();
    for (let row = 0; row < rows; row++) {
      for (let column = 0; column < 8; column++) cells.set(cellKey(row, column), { value: row * 8 + column });
    }
    host.workbook.selection = [area(0, 0, rows, 8)];
    const text = String(await excelHost().selection());
    const lines = text.split("\n");
    expect(lines).toHaveLength(rows);
    expect(lines[54_321]).toBe(Array.from({ length: 8 }, (_, column) => 54_321 * 8 + column).join("\t"));
  });

  test("of a table as fitters paste takes two requests and the library's tidying up", async () => {
    host.workbook.selection = [area(1, 1, 3, 3)];
    host.requests.length = 0;
    await excelHost().selection();
    expect(host.requests).toHaveLength(3);
  });

  test("of empty cells is told to be empty", async () => {
    host.workbook.selection = [area(20, 0, 5, 5)];
    expect(await excelHost().selection()).toEqual({
      kind: "unavailable",
      message: "The selected cells are empty. Select the table with its headings and try again.",
    });
  });

  test("of a chart is told to be no cells", async () => {
    host.workbook.selection = null;
    expect(await excelHost().selection()).toEqual({
      kind: "unavailable",
      message: "Something other than cells is selected. Select the cells of the table and try again.",
    });
  });
});
