import { invalid, type Outcome, type Problem, unavailable } from "../../outcome/problem.ts";
import type { WorkbookPlan } from "../../sheets/plan.ts";
import type { Run, Written } from "../host.ts";
import { excelProblem } from "./excel-problem.ts";
import { planSteps } from "./plan-steps.ts";
import { RUN_OPTIONS } from "./run-excel.ts";
import { sendSteps } from "./send-steps.ts";
import { sheetMarks } from "./sheet-marks.ts";
import { readStanding, type Standing } from "./standing.ts";
import { FLOOR, supports } from "./supports.ts";
import { takeAway } from "./take-away.ts";

/**
 * Writes a plan as new sheets. One request looks at what stands, one writes as much as a request may hold, and the
 * library sends one to tidy up; only a workbook of more than some 4.6 MB takes more. When any of it fails or
 * is stopped, the sheets and names written so far go again.
 */
export async function writeWorkbook(plan: WorkbookPlan, run: Run = {}): Promise<Outcome<Written>> {
  if (!supports(FLOOR)) {
    return unavailable(`This spreadsheet is too old to be written to: it lacks the set ExcelApi ${FLOOR}.`);
  }
  const marks = sheetMarks(plan);
  let before: Standing | undefined;
  try {
    const { steps, notes } = planSteps(plan, marks);
    const refused = await Excel.run(RUN_OPTIONS, async (context): Promise<Problem | undefined> => {
      const standing = await readStanding(context);
      const clash = firstClash(plan, standing);
      if (clash) return clash;
      before = standing;
      await sendSteps(context, steps, run);
      return undefined;
    });
    const seen = plan.sheets.filter(({ hidden }) => !hidden);
    return refused ?? { sheets: seen.map(({ name }) => name), notes };
  } catch (error) {
    const gone = before === undefined || (await takeAway(plan, marks, before));
    const then = gone
      ? "The workbook is as it was."
      : `Not all that was written could be taken away again; delete ${listed(plan)} by hand.`;
    return excelProblem(error, then);
  }
}

function firstClash(plan: WorkbookPlan, { sheets, names, tables }: Standing): Problem | undefined {
  const sheet = shared(
    plan.sheets,
    sheets.map(({ name }) => name),
  );
  if (sheet)
    return invalid(`The workbook already has a sheet called "${sheet}"; a new one needs another name.`);
  const planned = [...plan.names, ...plan.sheets.flatMap((one) => one.tables)];
  const name = shared(planned, [...names, ...tables]);
  if (name)
    return invalid(`The workbook already has a table or name "${name}"; a new one needs another name.`);
  return undefined;
}

function shared(
  planned: readonly { readonly name: string }[],
  standing: readonly string[],
): string | undefined {
  const taken = new Set(standing.map((name) => name.toLowerCase()));
  return planned.find(({ name }) => taken.has(name.toLowerCase()))?.name;
}

const listed = (plan: WorkbookPlan) => plan.sheets.map(({ name }) => `"${name}"`).join(", ");
