import { beforeEach, describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { FLOOR } from "../../../src/hosts/excel/supports.ts";
import { officeHost } from "../../office-host/office-host.ts";
import { putFittings } from "./put-fittings.ts";

// Writing and following in such a spreadsheet are tested beside writing and following.
describe("the oldest spreadsheet that the manifest lets in", () => {
  beforeEach(async () => {
    officeHost(FLOOR);
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      putFittings(sheet);
      sheet.getRange("C3").select();
      await context.sync();
    });
  });

  test("hands out the selected table", async () => {
    expect(await excelHost().selection()).toBe("Build\tCarry\nlight\t151.25\nheavy\t152");
  });

  test("names what is taken and lists its tables", async () => {
    expect(await excelHost().taken()).toEqual({ sheets: ["Sheet1"], names: ["Fittings"] });
    expect(await excelHost().tables()).toEqual(["Fittings"]);
  });

  test("hands out a table, or the sheet in front, as text", async () => {
    const text = "Build\tCarry\nlight\t151.25\nheavy\t152";
    expect(await excelHost().tableText("Fittings")).toBe(text);
    expect(await excelHost().tableText()).toBe(text);
  });

  test("hands out a table's cells, all or those that are looked for", async () => {
    expect(await excelHost().tableCells("Fittings")).toEqual({
      headings: ["Build", "Carry"],
      rows: [
        ["light", 151.25],
        ["heavy", 152],
      ],
    });
    const sought = { heading: "Build", texts: ["heavy"] };
    expect(await excelHost().tableCells("Fittings", ["Carry"], sought)).toEqual({
      headings: ["Build", "Carry"],
      rows: [[], [null, 152]],
    });
    expect(await excelHost().tableCells("Gone")).toBeNull();
  });

  test("keeps a text with the workbook and forgets it", async () => {
    expect(await excelHost().keep("key", "kept")).toBe(true);
    expect(await excelHost().recall("key")).toBe("kept");
    expect(await excelHost().keep("key", null)).toBe(true);
    expect(await excelHost().recall("key")).toBeNull();
  });
});
