import { beforeAll, describe, expect, it } from "vitest";
import type { Session } from "../../src/fitting/session.ts";
import { excelHost } from "../../src/hosts/excel/excel-host.ts";
import { writeXlsx } from "../../src/hosts/file/write-xlsx.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import type { WorkbookPlan } from "../../src/sheets/plan.ts";
import { answer } from "../club/answer.ts";
import { contentsOfPlan } from "../contents-of-plan.ts";
import { ledgerWorkbook } from "../ledger/ledger-workbook.ts";
import { contentsOfOfficeHost } from "../office-host/contents-of-office-host.ts";
import { officeHost } from "../office-host/office-host.ts";
import { demoSession } from "../sheets/demo-session.ts";
import { ODD_NAMES, oddSession } from "../sheets/odd-session.ts";
import type { WorkbookContents } from "../workbook-contents.ts";
import { comparableContents } from "./excel/comparable-contents.ts";
import { contentsOfXlsx } from "./file/contents-of-xlsx.ts";

// The page's grid is held against the same plan, and its saved file against the grid, in tests/browser.
const comparison = (session: Session) => comparisonWorkbook(session, NOTHING_TAKEN, "2026-11-25 10:00 UTC");
const WORKBOOKS: [string, () => WorkbookPlan][] = [
  ["the comparison workbook of the demo session", () => comparison(demoSession())],
  ["the comparison workbook of names and notes that look like formulas", () => comparison(oddSession())],
  ["the workbook of the ledger", ledgerWorkbook],
];

describe.each(WORKBOOKS)("%s", (_, planned) => {
  let plan: WorkbookPlan;
  let file: WorkbookContents;
  let spreadsheet: WorkbookContents;

  beforeAll(async () => {
    plan = planned();
    file = await contentsOfXlsx(answer(await writeXlsx(plan)));
    const host = officeHost();
    answer(await excelHost().write(plan));
    spreadsheet = contentsOfOfficeHost(host.workbook, (name) => name !== "Sheet1");
  });

  it("holds in the file what the plan says: sheets, values, formulas, answers and formats", () => {
    expect(file).toEqual(contentsOfPlan(plan));
  });

  it("holds in the spreadsheet what the file holds", () => {
    expect(comparableContents(spreadsheet)).toEqual(comparableContents(file));
  });
});

describe("text that a spreadsheet would take for a formula", () => {
  const TEXTS = ['=HYPERLINK("x")', "+1+1", "-2+3", "@x", ...ODD_NAMES];

  it("stays text in the file and in the spreadsheet", async () => {
    const plan = comparisonWorkbook(oddSession(), NOTHING_TAKEN, "2026-11-25 10:00 UTC");
    const host = officeHost();
    answer(await excelHost().write(plan));
    for (const { sheets } of [
      await contentsOfXlsx(answer(await writeXlsx(plan))),
      contentsOfOfficeHost(host.workbook, () => true),
    ]) {
      const shots = Object.values(sheets.find(({ name }) => name === "Shots")!.cells);
      for (const text of TEXTS) {
        const found = shots.filter(({ value }) => value === text);
        expect(found.length, text).toBeGreaterThan(0);
        expect(found.filter(({ formula }) => formula !== undefined)).toEqual([]);
      }
    }
  });
});
