import { invalid, isProblem, type Outcome, type Problem, unavailable } from "../../outcome/problem.ts";
import type { WorkbookPlan } from "../../sheets/plan.ts";
import { isAsExpected, isIdle, type TableChange } from "../../sheets/table-change.ts";
import type { Run, Written } from "../host.ts";
import { changeSteps } from "./change-steps.ts";
import { excelProblem } from "./excel-problem.ts";
import { restoreSteps } from "./restore-steps.ts";
import { RUN_OPTIONS, runExcel } from "./run-excel.ts";
import { sendSteps } from "./send-steps.ts";
import { readStandingTable, type StandingTable } from "./standing-table.ts";
import { supports } from "./supports.ts";
import { writeWorkbook } from "./write-workbook.ts";

/** Tables grow by `Table.resize`, which came with this set. */
const NEEDED = "1.13";

/**
 * Changes tables in place, then adds the plan's sheets. Two or three requests look at each table and keep what will be
 * written over, one writes where the change is small, and the library sends one to tidy up. When any of it fails or is stopped, what was kept is written back.
 */
export async function changeTables(
  changes: readonly TableChange[],
  create: WorkbookPlan | null,
  run: Run = {},
): Promise<Outcome<Written>> {
  const work = changes.filter((change) => !isIdle(change));
  if (work.length > 0 && !supports(NEEDED)) {
    return unavailable(
      `This spreadsheet is too old to add rows to a table: it lacks the set ExcelApi ${NEEDED}.`,
    );
  }
  const before: StandingTable[] = [];
  try {
    const refused = await Excel.run(RUN_OPTIONS, (context) => carryOut(context, work, before, run));
    if (refused) return refused;
  } catch (error) {
    return excelProblem(error, await takeBack(before));
  }
  if (!create) return { sheets: [], notes: [] };
  const written = await writeWorkbook(create, run);
  if (!isProblem(written)) return written;
  return { ...written, message: `${written.message} ${await takeBack(before)}` };
}

async function carryOut(
  context: Excel.RequestContext,
  work: readonly TableChange[],
  before: StandingTable[],
  run: Run,
): Promise<Problem | undefined> {
  const standing: StandingTable[] = [];
  for (const change of work) {
    const found = await readStandingTable(context, change);
    if (isProblem(found)) return found;
    if (!isAsExpected(change, found.headings, found.rows)) {
      return invalid(
        `The table "${change.table}" has changed in the meantime; nothing was written. Try again.`,
      );
    }
    standing.push(found);
  }
  // From here on something may be half done.
  before.push(...standing);
  const steps = standing.flatMap((table, i) => changeSteps(table, work[i]!));
  await sendSteps(context, steps, run);
  return undefined;
}

/** Writes back what was kept, and says how that went. */
async function takeBack(before: readonly StandingTable[]): Promise<string> {
  if (before.length === 0) return "The tables are as they were.";
  const done = await runExcel<true>(async (context) => {
    // Nothing stops this, for halfway is what it ends.
    await sendSteps(context, before.flatMap(restoreSteps));
    return true;
  });
  const names = before.map(({ name }) => `"${name}"`).join(" and ");
  return isProblem(done)
    ? `Not all could be put back: undo the last step, or look at the end of the table ${names}.`
    : "The tables are as they were.";
}
