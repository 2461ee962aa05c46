import { describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { isProblem } from "../../../src/outcome/problem.ts";
import { benchJob } from "../../../src/sheets/bench-job.ts";
import type { WorkbookPlan } from "../../../src/sheets/plan.ts";
import { sessionWorkbook } from "../../../src/sheets/session-workbook.ts";
import { answer } from "../../club/answer.ts";
import { contentsOfOfficeHost } from "../../office-host/contents-of-office-host.ts";
import { officeHost } from "../../office-host/office-host.ts";
import type { Fault, Service } from "../../office-host/service.ts";
import { stateOf } from "../../office-host/state-of.ts";
import { SET_TEXT } from "../../sheets/bench-set.ts";
import { demoSession } from "../../sheets/demo-session.ts";

/** Of the thousands of actions every so many fails in turn; the small plan's test fails each one. */
const STRIDE = 97;

const contents = ({ workbook }: Service) => contentsOfOfficeHost(workbook);

/** A workbook in which the user has something of their own. */
async function hostWithWork(): Promise<Service> {
  const host = officeHost();
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    sheet.getRange("A1:B2").formulas = [
      ["Player", "Visits"],
      ["'R. Ashdown", "=1+1"],
    ];
    context.workbook.names.add("Visits", sheet.getRange("B2"));
    await context.sync();
  });
  host.requests.length = 0;
  return host;
}

async function writeWith(plan: WorkbookPlan, fault?: Fault) {
  const host = await hostWithWork();
  const before = stateOf(host);
  if (fault) host.fault = fault;
  return { host, before, outcome: await excelHost().write(plan) };
}

describe("comparison, decision and bench sheets", { timeout: 240_000 }, () => {
  test("stand whole or not at all, whichever request fails and wherever in it", async () => {
    const session = demoSession();
    const job = answer(benchJob(session, "105 g mid-launch", SET_TEXT));
    const plan = sessionWorkbook(session, job, "2026-11-25 10:00 UTC");
    expect(plan.sheets.map(({ name }) => name)).toContain("Build");
    const healthy = await writeWith(plan);
    expect(isProblem(healthy.outcome)).toBe(false);
    const { requests } = healthy.host;
    let faults = 0;
    for (const [request, { actions }] of requests.entries()) {
      const places: Fault["action"][] = [-1, "answer", 0, actions - 1];
      for (let action = STRIDE; action < actions - 1; action += STRIDE) places.push(action);
      for (const action of places) {
        const { host, before, outcome } = await writeWith(plan, { request, action });
        const where = `request ${request}, action ${action} of ${actions}`;
        if (isProblem(outcome)) expect(stateOf(host), where).toEqual(before);
        else expect(contents(host), where).toEqual(contents(healthy.host));
        expect(isProblem(outcome), where).toBe(request < requests.length - 1);
        faults++;
      }
    }
    console.log(`${requests.length} requests, ${faults} faults, none left anything behind`);
  });
});
