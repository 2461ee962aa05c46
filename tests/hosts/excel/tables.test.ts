import { beforeEach, describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { officeHost } from "../../office-host/office-host.ts";
import type { Service } from "../../office-host/service.ts";
import { putFittings } from "./put-fittings.ts";

let host: Service;

beforeEach(async () => {
  host = officeHost();
  await Excel.run(async (context) => {
    putFittings(context.workbook.worksheets.getItem("Sheet1"));
    const other = context.workbook.worksheets.add("Other");
    other.getRange("A1:A3").formulas = [["Spin"], [6000], [6100]];
    other.tables.add("A1:A3", true).name = "Spins";
    other.activate();
    await context.sync();
  });
});

describe("a table as the source of shots", () => {
  test("is chosen by name, those on the sheet in front first", async () => {
    host.requests.length = 0;
    expect(await excelHost().tables()).toEqual(["Spins", "Fittings"]);
    expect(host.requests).toHaveLength(1);
  });

  test("comes as text with its headings, wherever it stands", async () => {
    expect(await excelHost().tableText("Fittings")).toBe("Build\tCarry\nlight\t151.25\nheavy\t152");
  });

  test("that is gone is named", async () => {
    expect(await excelHost().tableText("Gone")).toEqual({
      kind: "unavailable",
      message: 'There is no table "Gone" any more; choose another.',
    });
  });
});

describe("the sheet in front as the source of shots", () => {
  test("comes as text of all that is used on it", async () => {
    expect(await excelHost().tableText()).toBe("Spin\n6000\n6100");
  });

  test("that is empty is told to be empty", async () => {
    await Excel.run(async (context) => {
      context.workbook.worksheets.add("Empty").activate();
      await context.sync();
    });
    expect(await excelHost().tableText()).toMatchObject({
      message: "The sheet in front is empty. Go to the one with the shots.",
    });
  });
});
