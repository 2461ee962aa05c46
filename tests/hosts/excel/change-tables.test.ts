import { describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { isProblem } from "../../../src/outcome/problem.ts";
import type { TableChange } from "../../../src/sheets/table-change.ts";
import { officeHost } from "../../office-host/office-host.ts";
import type { Fault, Service } from "../../office-host/service.ts";
import { stateOf } from "../../office-host/state-of.ts";

/** A table "Own" from B2 on: a number, a text, and a formula of the user's in each row that doubles the number. */
async function withTable(rows: number, text = "note"): Promise<Service> {
  const service = officeHost();
  const most = 3_000;
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    sheet.getRange("B2:D2").formulas = [["'Carry", "'Note", "'Twice"]];
    for (let from = 0; from < rows; from += most) {
      const count = Math.min(most, rows - from);
      sheet.getRangeByIndexes(2 + from, 1, count, 3).formulas = Array.from({ length: count }, (_, i) => [
        from + i,
        `'${text} ${from + i}`,
        `=B${from + i + 3}*2`,
      ]);
      await context.sync();
    }
    sheet.tables.add(`B2:D${rows + 2}`, true).name = "Own";
    await context.sync();
  });
  return service;
}

const changeOf = (rows: number, part: Partial<TableChange>): TableChange => ({
  table: "Own",
  expected: { headings: ["Carry", "Note", "Twice"], rows },
  rename: [],
  columns: [],
  update: [],
  remove: [],
  append: [],
  ...part,
});

const formulas = async (address: string) =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange(address);
    range.load("formulas");
    await context.sync();
    return range.formulas;
  });

describe("a table of the workbook that is changed", { timeout: 120_000 }, () => {
  test("closes up over rows that go with formulas that read their own row", async () => {
    await withTable(4);
    await excelHost().changeTables([changeOf(4, { remove: [0, 2] })], null);
    expect(await formulas("B2:D5")).toEqual([
      ["Carry", "Note", "Twice"],
      [1, "note 1", "=B3*2"],
      [3, "note 3", "=B4*2"],
      ["", "", ""],
    ]);
  });

  test("is as it was, formulas and all, when taking rows out fails at any action of any request", async () => {
    const healthy = await withTable(4);
    const from = healthy.requests.length;
    const change = changeOf(4, { remove: [0, 2] });
    await excelHost().changeTables([change], null);
    const requests = healthy.requests.slice(from);
    for (const [request, { actions }] of requests.entries()) {
      const faults = [-1, "answer", ...Array.from({ length: actions }, (_, i) => i)] as Fault["action"][];
      for (const action of faults) {
        const service = await withTable(4);
        const before = stateOf(service);
        service.fault = { request: service.requests.length + request, action };
        const outcome = await excelHost().changeTables([change], null);
        const where = `request ${request}, action ${action}`;
        // Only the tidying up at the end may go wrong without the change failing.
        expect(isProblem(outcome), where).toBe(request < requests.length - 1);
        if (isProblem(outcome)) expect(stateOf(service), where).toEqual(before);
      }
    }
  });

  test("of 9,000 long rows is as it was when taking one out fails at any request", async () => {
    const text = "x".repeat(150);
    const healthy = await withTable(9_000, text);
    const from = healthy.requests.length;
    const change = changeOf(9_000, { remove: [0] });
    expect(isProblem(await excelHost().changeTables([change], null))).toBe(false);
    const count = healthy.requests.length - from;
    // Looked at twice, read, written, tidied up.
    expect(count).toBeGreaterThan(4);
    for (let request = 0; request < count - 1; request++) {
      const service = await withTable(9_000, text);
      const before = service.workbook.sheets[0]!.cells;
      const entries = new Map(before);
      service.fault = { request: service.requests.length + request, action: "answer" };
      expect(await excelHost().changeTables([change], null), `request ${request}`).toMatchObject({
        message: expect.stringMatching(/The tables are as they were\.$/),
      });
      expect(new Map(service.workbook.sheets[0]!.cells), `request ${request}`).toEqual(entries);
      expect(service.workbook.sheets[0]!.tables[0]!.area.rows).toBe(9_001);
    }
  });

  test("says that the work was stopped, and not that the spreadsheet erred", async () => {
    const service = await withTable(4);
    const before = stateOf(service);
    const stop = new AbortController();
    stop.abort();
    const append = [[5, "more", null]];
    const outcome = await excelHost().changeTables([changeOf(4, { append })], null, { signal: stop.signal });
    expect(outcome).toEqual({
      kind: "unavailable",
      message: "Stopped. The tables are as they were.",
    });
    expect(stateOf(service)).toEqual(before);
  });
});
