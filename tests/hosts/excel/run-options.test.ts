import { afterEach, expect, test, vi } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { answer } from "../../club/answer.ts";
import { connectOffice } from "../../office-host/connect-office.ts";
import { officeHost } from "../../office-host/office-host.ts";
import { samplePlan } from "../../sheets/sample-plan.ts";

afterEach(() => {
  vi.restoreAllMocks();
});

const CHANGE = {
  table: "Shots_1",
  expected: { headings: ["Keep", "Build", "Carry (yd)", "Offline (yd)", "Remark"], rows: 15 },
  rename: [],
  columns: [],
  update: [],
  remove: [],
  append: [[true, "A 65 g", 250, 1, null]],
};

// Source: the declared options of `Excel.run` (delayForCellEdit; mergeUndoGroup of ExcelApi 1.20).
test("every batch that changes something is one step to undo and waits for a cell that is being edited", async () => {
  const host = officeHost();
  const run = vi.spyOn(Excel, "run");
  answer(await excelHost().write(samplePlan()));
  answer(await excelHost().changeTables([CHANGE], null));
  await excelHost().keep("key", "text");
  host.fault = { request: host.requests.length + 1, action: 5 };
  const failing = await excelHost().write({
    ...samplePlan(),
    sheets: [{ ...samplePlan().sheets[2]!, name: "More" }],
    names: [],
  });
  expect(failing).toMatchObject({ message: expect.stringContaining("The workbook is as it was.") });
  expect(run.mock.calls.length).toBeGreaterThanOrEqual(4);
  for (const [options] of run.mock.calls as unknown[][]) {
    expect(options).toEqual({ delayForCellEdit: true, mergeUndoGroup: true });
  }
});

test("a spreadsheet that can wait for a cell being edited is asked to, by the flag that the library has for it", async () => {
  const service = officeHost();
  const flags: number[] = [];
  connectOffice(service.answer, "1.20", (sent) => flags.push(sent));
  await excelHost().write(samplePlan());
  expect(flags.length).toBe(3);
  // In the client library: context._requestFlagModifier |= 64.
  for (const sent of flags) expect(sent & 64).toBe(64);
});
