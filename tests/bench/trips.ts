import { excelHost } from "../../src/hosts/excel/excel-host.ts";
import { MOST_BYTES } from "../../src/hosts/excel/pack-steps.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import type { WorkbookPlan } from "../../src/sheets/plan.ts";
import { bigPlan } from "../hosts/excel/big-plan.ts";
import { demoOfSize } from "../hosts/excel/demo-of-size.ts";
import { officeHost } from "../office-host/office-host.ts";
import type { BenchLine } from "./run.ts";

const SHOTS = [12, 1_000, 100_000];

/** A workbook that is no larger than one request may be is written in so many syncs. */
const SYNCS = 3;

/**
 * How often a write goes to the spreadsheet and back, and what it sends, beside the bare values as JSON: a table of 12
 * columns, and the whole comparison with all its looks, formulas and charts.
 */
export async function* bench(): AsyncGenerator<BenchLine> {
  for (const shots of SHOTS) yield await tripsOf("a table of 12 columns", shots, bigPlan(shots));
  for (const shots of SHOTS) {
    const plan = comparisonWorkbook(demoOfSize(shots), NOTHING_TAKEN, "14 May 2026, 10:30");
    yield await tripsOf("the whole comparison", shots, plan);
  }
}

async function tripsOf(what: string, shots: number, plan: WorkbookPlan): Promise<BenchLine> {
  const { requests } = officeHost();
  const written = await excelHost().write(plan);
  if (isProblem(written)) throw new Error(written.message);
  const payloadBytes = requests.reduce((sum, { bytes }) => sum + bytes, 0);
  const valuesBytes = Buffer.byteLength(
    JSON.stringify(plan.sheets.map(({ blocks }) => blocks.map(({ cells }) => cells))),
  );
  return {
    what,
    shots,
    syncs: requests.length,
    payloadBytes,
    valuesBytes,
    ratio: Number((payloadBytes / valuesBytes).toFixed(2)),
    largestRequest: Math.max(...requests.map(({ bytes }) => bytes)),
    ...(payloadBytes < MOST_BYTES ? { goal: SYNCS, met: requests.length <= SYNCS } : {}),
  };
}
