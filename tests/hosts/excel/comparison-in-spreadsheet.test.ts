import { beforeAll, describe, expect, test } from "vitest";
import { DEMO_FACTS, DEMO_TEXT } from "../../../src/fitting/demo.ts";
import { sessionOf } from "../../../src/fitting/session.ts";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx.ts";
import { isProblem } from "../../../src/outcome/problem.ts";
import { comparisonWorkbook } from "../../../src/sheets/comparison-workbook.ts";
import type { WorkbookPlan } from "../../../src/sheets/plan.ts";
import { readShots } from "../../../src/shots/read-shots.ts";
import { contentsOfPlan } from "../../contents-of-plan.ts";
import { contentsOfOfficeHost } from "../../office-host/contents-of-office-host.ts";
import { officeHost } from "../../office-host/office-host.ts";
import type { Service } from "../../office-host/service.ts";
import { contentsOfXlsx } from "../file/contents-of-xlsx.ts";
import { comparableContents } from "./comparable-contents.ts";

describe("the comparison of the demo session, written in the spreadsheet", () => {
  let plan: WorkbookPlan;
  let host: Service;

  beforeAll(async () => {
    host = officeHost();
    const taken = await excelHost().taken();
    const table = readShots(DEMO_TEXT);
    if (isProblem(taken)) throw new Error(taken.message);
    if (isProblem(table)) throw new Error(table.message);
    plan = comparisonWorkbook(sessionOf(table, DEMO_FACTS), taken, "14 May 2026, 10:30");
    host.requests.length = 0;
    const visible = plan.sheets.filter(({ hidden }) => !hidden);
    expect(await excelHost().write(plan)).toMatchObject({ sheets: visible.map(({ name }) => name) });
  });

  const written = () => comparableContents(contentsOfOfficeHost(host.workbook, (name) => name !== "Sheet1"));

  test("holds what the plan says", () => {
    expect(written()).toEqual(comparableContents(contentsOfPlan(plan)));
  });

  test("equals the workbook that the file host writes, cell by cell and chart by chart", async () => {
    const bytes = await writeXlsx(plan);
    if (isProblem(bytes)) throw new Error(bytes.message);
    expect(written()).toEqual(comparableContents(await contentsOfXlsx(bytes)));
  });

  test("takes two syncs and the library's tidying up", () => {
    const bytes = host.requests.reduce((sum, request) => sum + request.bytes, 0);
    const values = JSON.stringify(
      plan.sheets.flatMap(({ blocks }) => blocks.map(({ cells }) => cells)),
    ).length;
    console.log(
      `the demo comparison: ${host.requests.length} requests, ${bytes} bytes, the bare values ${values}`,
    );
    expect(host.requests).toHaveLength(3);
  });
});
