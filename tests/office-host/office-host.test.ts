import { beforeEach, describe, expect, test } from "vitest";
import { officeHost } from "./office-host.ts";
import type { Service } from "./service.ts";
import { watchMembers } from "./stray-members.ts";

let host: Service;
beforeEach(() => {
  host = officeHost();
});

/** The code of the error that a batch ends with. */
async function codeOf(batch: (sheets: Excel.WorksheetCollection, context: Excel.RequestContext) => void) {
  try {
    await Excel.run(async (context) => {
      batch(context.workbook.worksheets, context);
      await context.sync();
    });
    return "none";
  } catch (error) {
    return (error as OfficeExtension.Error).code;
  }
}

// Codes as the documentation of the add-in platform lists them for these mistakes.
describe("the service answers with", () => {
  test("ItemNotFound for a sheet that is not there", async () => {
    expect(await codeOf((sheets) => sheets.getItem("Nowhere").load("name"))).toBe("ItemNotFound");
  });

  test("ItemAlreadyExists for a second sheet of a name, in any case", async () => {
    expect(await codeOf((sheets) => sheets.add("SHEET1"))).toBe("ItemAlreadyExists");
  });

  test.each(["a/b", "History", "", "x".repeat(32), "'quoted"])(
    "InvalidArgument for the sheet name %j",
    async (name) => {
      expect(await codeOf((sheets) => sheets.add(name))).toBe("InvalidArgument");
    },
  );

  test("InvalidArgument for an address that is none, and for values of another size", async () => {
    expect(await codeOf((sheets) => sheets.getItem("Sheet1").getRange("A0"))).toBe("InvalidArgument");
    const wrong = await codeOf((sheets) => {
      sheets.getItem("Sheet1").getRange("A1:B2").values = [[1, 2]];
    });
    expect(wrong).toBe("InvalidArgument");
  });

  test.each(["=SUM(A1", "='Nowhere'!A1", "=Nothing[Carry]", "=1+", '="open'])(
    "InvalidArgument for the formula %s",
    async (formula) => {
      const code = await codeOf((sheets) => {
        sheets.getItem("Sheet1").getRange("A1").formulas = [[formula]];
      });
      expect(code).toBe("InvalidArgument");
    },
  );

  test("InvalidArgument for a formula of more than 8,192 letters", async () => {
    const enter = (ones: number) =>
      codeOf((sheets) => {
        sheets.getItem("Sheet1").getRange("A1").formulas = [[`=1${"+1".repeat(ones)}`]];
      });
    expect(await enter(4_095)).toBe("none");
    expect(await enter(4_096)).toBe("InvalidArgument");
  });

  test("RequestPayloadSizeLimitExceeded for more than 5 MB at once", async () => {
    const code = await codeOf((sheets) => {
      sheets.getItem("Sheet1").getRange("A1:A200").values = Array.from({ length: 200 }, () => [
        "x".repeat(30_000),
      ]);
    });
    expect(code).toBe("RequestPayloadSizeLimitExceeded");
  });

  test("ApiNotFound for a member of a set that the spreadsheet lacks", async () => {
    officeHost("1.9");
    const code = await codeOf((sheets, { workbook }) => {
      workbook.comments.add(sheets.getItem("Sheet1").getRange("A1"), "no");
    });
    expect(code).toBe("ApiNotFound");
  });

  test("an error for a series' name, marker size or colour that there is not", async () => {
    for (const wrong of [
      { name: "=1+1" },
      { markerSize: 1 },
      { markerBackgroundColor: "red-ish" },
      { markerStyle: "Heart" },
    ]) {
      const code = await codeOf((sheets) => {
        const sheet = sheets.getItem("Sheet1");
        const chart = sheet.charts.add("XYScatter", sheet.getRange("A1:A3"), "Columns");
        Object.assign(chart.series.getItemAt(0), wrong);
      });
      expect(code).toBe("InvalidArgument");
    }
  });
});

describe("the workbook in memory", () => {
  test("answers what was asked for and nothing more", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("B2:C3");
      range.values = [
        [1, "two"],
        [true, ""],
      ];
      range.format.font.bold = true;
      range.load("address,values,format/font/bold");
      await context.sync();
      expect(range.address).toBe("Sheet1!B2:C3");
      expect(range.values).toEqual([
        [1, "two"],
        [true, ""],
      ]);
      expect(range.format.font.bold).toBe(true);
      expect(() => range.rowCount).toThrow(/rowCount/);
    });
  });

  test("answers a missing object as null and carries out nothing on it", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject("Nowhere");
      sheet.delete();
      sheet.load("name");
      await context.sync();
      expect(sheet.isNullObject).toBe(true);
    });
    expect(host.workbook.sheets).toHaveLength(1);
  });

  test("keeps what a failed request did before it failed, as the service does", async () => {
    await codeOf((sheets) => {
      sheets.add("First");
      sheets.getItem("Nowhere").delete();
      sheets.add("Second");
    });
    expect(host.workbook.sheets.map(({ bag }) => bag.Name)).toEqual(["Sheet1", "First"]);
  });

  test("keeps the last visible sheet", async () => {
    expect(await codeOf((sheets) => sheets.getItem("Sheet1").delete())).toBe("InvalidOperation");
  });

  test("takes an array larger than the library sends in one piece", async () => {
    const values = Array.from({ length: 1_000 }, (_, row) => [row, row * 2]);
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1:B1000");
      range.values = values;
      range.load("values");
      await context.sync();
      expect(range.values).toEqual(values);
    });
  });

  test("finds a range again by its reference in a later request", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
      await context.sync();
      range.values = [[5]];
      await context.sync();
    });
    expect(host.workbook.sheets[0]!.cells.get(0)).toEqual({ value: 5 });
  });
});

test("the watch on members finds one that the library does not know", async () => {
  const strays = watchMembers();
  await Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
    // A member of ExcelApi 1.16, which type-checks and which this library does not have.
    range.valuesAsJson = [[{ type: "Double", basicValue: 1 } as Excel.DoubleCellValue]];
    await context.sync();
  });
  expect(strays()).toEqual(["valuesAsJson"]);
});
