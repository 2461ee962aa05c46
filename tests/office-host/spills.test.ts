import { beforeEach, describe, expect, test } from "vitest";
import { officeHost } from "./office-host.ts";

beforeEach(() => {
  officeHost();
});

/** Enters formulas by cell, and answers what the range then holds. */
function entered(
  entries: Readonly<Record<string, unknown>>,
  address: string,
  then = (_: Excel.Worksheet) => {},
) {
  return Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    for (const [cell, entry] of Object.entries(entries)) sheet.getRange(cell).formulas = [[entry]];
    then(sheet);
    const range = sheet.getRange(address);
    range.load("values,formulas,hasSpill");
    await context.sync();
    const { values, formulas, hasSpill } = range;
    return { values, formulas, hasSpill };
  });
}

const FIGURES = { A1: 1, A2: 2, A3: 3 };

// What a spill does is as the platform's documentation tells it: "Dynamic array formulas and spilled array behavior".
describe("a formula that answers several cells", () => {
  test("fills them, and they have its answers though nothing was entered there", async () => {
    const row = await entered({ ...FIGURES, C5: "=TRANSPOSE(A1:A3)" }, "C5:E5");
    expect(row).toEqual({ values: [[1, 2, 3]], formulas: [["=TRANSPOSE(A1:A3)", 2, 3]], hasSpill: true });
  });

  test("answers #SPILL! and fills nothing while something is in the way, and fills again once it is gone", async () => {
    const blocked = await entered({ ...FIGURES, C5: "=TRANSPOSE(A1:A3)", E5: "'mine" }, "C5:E5");
    expect(blocked).toMatchObject({ values: [["#SPILL!", "", "mine"]], hasSpill: false });
    const freed = await entered({}, "C5:E5", (sheet) => sheet.getRange("E5").clear("Contents"));
    expect(freed.values).toEqual([[1, 2, 3]]);
  });

  test("finds no room in a merged area, in a table or beyond the last column", async () => {
    const merged = await entered({ C5: "=A1:A3" }, "C5", (sheet) => sheet.getRange("C6:D6").merge());
    expect(merged.values).toEqual([["#SPILL!"]]);
    const table = await entered({ G1: "'Carry", G2: "=A1:A3" }, "G2", (sheet) => {
      sheet.tables.add("G1:G2", true);
    });
    expect(table.values).toEqual([["#SPILL!"]]);
    expect((await entered({ XFC1: "=TRANSPOSE(A1:A3)" }, "XFC1")).values).toEqual([["#SPILL!"]]);
  });

  test("says where it spills, and a cell it fills says where from", async () => {
    await entered({ ...FIGURES, C5: "=A1:A3" }, "C5");
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      const to = sheet.getRange("C5").getSpillingToRange();
      const from = sheet.getRange("C7").getSpillParent();
      const none = sheet.getRange("A1").getSpillingToRangeOrNullObject();
      const used = sheet.getUsedRange();
      for (const range of [to, from, none, used]) range.load("address");
      await context.sync();
      expect([to.address, from.address, none.isNullObject]).toEqual(["Sheet1!C5:C7", "Sheet1!C5", true]);
      expect(used.address).toBe("Sheet1!A1:C7");
    });
  });

  test("is refused its whereabouts by a spreadsheet without dynamic arrays", async () => {
    officeHost("1.11");
    await expect(
      Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Sheet1").getRange("A1").getSpillingToRange();
        await context.sync();
      }),
    ).rejects.toMatchObject({ code: "ApiNotFound" });
  });
});
