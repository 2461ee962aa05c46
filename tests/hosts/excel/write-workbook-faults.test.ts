import { describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { isProblem } from "../../../src/outcome/problem.ts";
import type { WorkbookPlan } from "../../../src/sheets/plan.ts";
import { contentsOfOfficeHost } from "../../office-host/contents-of-office-host.ts";
import { officeHost } from "../../office-host/office-host.ts";
import type { Fault, Service } from "../../office-host/service.ts";
import { stateOf } from "../../office-host/state-of.ts";
import { newWorkbook } from "../../office-host/workbook.ts";
import { samplePlan } from "../../sheets/sample-plan.ts";
import { bigPlan } from "./big-plan.ts";

const WHOLE_NAMES = ["Sheet1", "Player's comparison", "Shots & more", "Limits"];

async function writeWith(fault: Fault, plan: WorkbookPlan = samplePlan()) {
  const host = officeHost();
  const before = stateOf(host);
  host.fault = fault;
  const outcome = await excelHost().write(plan);
  return { host, before, outcome };
}

async function healthyRequests() {
  const { requests } = officeHost();
  await excelHost().write(samplePlan());
  return requests;
}

describe("a write that fails", { timeout: 120_000 }, () => {
  test("at any action of any request leaves the workbook as it was, or the new sheets whole", async () => {
    const requests = await healthyRequests();
    const whole = stateOf({ ...officeHost(), workbook: await written() });
    for (const [request, { actions }] of requests.entries()) {
      for (let action = 0; action < actions; action++) {
        const { host, before, outcome } = await writeWith({ request, action });
        const where = `request ${request}, action ${action}`;
        if (isProblem(outcome)) expect(stateOf(host), where).toEqual(before);
        else expect(contents(host), where).toEqual(contents({ workbook: whole }));
        // Only the tidying up at the end may go wrong without the write failing.
        expect(isProblem(outcome), where).toBe(request < requests.length - 1);
      }
    }
  });

  test.each([0, 1])("because request %i never arrives leaves the workbook as it was", async (request) => {
    const { host, before, outcome } = await writeWith({ request, action: -1 });
    expect(outcome).toMatchObject({ kind: "unavailable" });
    expect(stateOf(host)).toEqual(before);
  });

  test.each([0, 1])(
    "because the answer to request %i is lost leaves the workbook as it was",
    async (request) => {
      const { host, before, outcome } = await writeWith({ request, action: "answer" });
      expect(outcome).toMatchObject({ kind: "unavailable" });
      expect(stateOf(host)).toEqual(before);
    },
  );

  test("is none when only the tidying up at the end is lost", async () => {
    const { host, outcome } = await writeWith({ request: 2, action: -1 });
    expect(isProblem(outcome)).toBe(false);
    expect(host.workbook.sheets.map(({ bag }) => bag.Name)).toEqual(WHOLE_NAMES);
  });

  test("in any of several requests takes all of them back", async () => {
    const { requests } = officeHost();
    await excelHost().write(bigPlan(80_000));
    const last = requests.length - 2;
    expect(last).toBeGreaterThan(1);
    for (let request = 0; request <= last; request++) {
      for (const action of [-1, "answer"] as const) {
        const { host, before, outcome } = await writeWith({ request, action }, bigPlan(80_000));
        expect(outcome, `request ${request}`).toMatchObject({ kind: "unavailable" });
        expect(stateOf(host), `request ${request}`).toEqual(before);
      }
    }
  });

  test("once its own sheet has come to the front gives the user's back, whichever that was", async () => {
    const host = officeHost();
    await Excel.run(async (context) => {
      context.workbook.worksheets.add("Mine").activate();
      context.workbook.worksheets.add("Last");
      await context.sync();
    });
    const before = stateOf(host);
    host.fault = { request: host.requests.length + 1, action: "answer" };
    expect(await excelHost().write(samplePlan())).toMatchObject({
      message: expect.stringContaining("The workbook is as it was."),
    });
    expect(stateOf(host)).toEqual(before);
  });

  test("and cannot be taken back names the sheets to delete", async () => {
    const { outcome } = await writeWith({ request: 1, action: 100, lasting: true });
    expect(outcome).toMatchObject({
      message: expect.stringContaining(
        'Not all that was written could be taken away again; delete "Player\'s comparison", "Shots & more", "Limits" by hand.',
      ),
    });
  });

  test("because someone took a name in the meantime leaves their sheet alone", async () => {
    const host = officeHost();
    host.before = (request) => {
      if (request === 1)
        host.workbook.sheets.push({
          ...newWorkbook().sheets[0]!,
          id: "{theirs}",
          bag: { Name: "Limits", Visibility: "Visible" },
        });
    };
    expect(await excelHost().write(samplePlan())).toMatchObject({ kind: "unavailable" });
    expect(host.workbook.sheets.map(({ bag }) => bag.Name)).toEqual(["Sheet1", "Limits"]);
  });

  test("in a protected workbook says what to do", async () => {
    const { outcome } = await writeWith({ request: 1, action: 5, code: "AccessDenied" });
    expect(outcome).toMatchObject({
      message: "The workbook is protected. Take the protection off and try again. The workbook is as it was.",
    });
  });
});

async function written() {
  const host = officeHost();
  await excelHost().write(samplePlan());
  expect(host.workbook.sheets.map(({ bag }) => bag.Name)).toEqual(WHOLE_NAMES);
  return host.workbook;
}

const contents = ({ workbook }: Pick<Service, "workbook">) => contentsOfOfficeHost(workbook);
