import type { Outcome } from "../../outcome/problem.ts";
import { invalid, unavailable } from "../../outcome/problem.ts";
import { sheetAreaName } from "../../sheets/a1.ts";
import type { SheetPlan, WorkbookPlan } from "../../sheets/plan.ts";
import type { Run, Written } from "../host.ts";
import { addConditions } from "./add-conditions.ts";
import { addNotes } from "./add-notes.ts";
import { addTables } from "./add-tables.ts";
import { addValidations } from "./add-validations.ts";
import { addCharts } from "./chart-pictures.ts";
import type { Grid, Sheet, Workbook } from "./grid.ts";
import type { Memory } from "./remembered.ts";
import { sheetData } from "./sheet-data.ts";
import { takenIn } from "./taken.ts";

const CHARTS_AS_PICTURES =
  "Charts are pictures here, drawn again when figures change; a saved file has native charts.";

/** Carries a plan out in the grid. Where any step fails, its own sheets and names go again. */
export async function writePlan(
  grid: Grid,
  workbook: Workbook,
  memory: Memory,
  plan: WorkbookPlan,
  run: Run = {},
): Promise<Outcome<Written>> {
  const clash = nameInUse(workbook, plan);
  if (clash) return invalid(`The name ${clash} is already in use in this workbook; nothing was written.`);
  const before = workbook.getActiveSheet();
  const added: Sheet[] = [];
  const names: string[] = [];
  const steps = plan.sheets.length * 2 + 1;
  let done = 0;
  const step = async () => {
    run.signal?.throwIfAborted();
    run.progress?.(++done / steps);
    // Lets the page breathe, and a click on "stop" come through.
    await new Promise((resolve) => setTimeout(resolve));
  };
  try {
    for (const sheet of plan.sheets) {
      added.push(workbook.insertSheet(sheet.name, { sheet: sheetData(sheet) }));
      await step();
    }
    for (const { name, at } of plan.names) {
      workbook.insertDefinedName(name, sheetAreaName(at));
      names.push(name);
    }
    // Before the conditions: a table that comes later loses the grid's thread among their formulas.
    for (const [i, sheet] of plan.sheets.entries()) await addTables(grid, workbook, added[i]!, sheet);
    await calculated(grid);
    for (const [i, sheet] of plan.sheets.entries()) {
      await dress(grid, workbook, added[i]!, sheet, memory);
      await step();
    }
    (workbook.getSheetByName(plan.active) ?? added[0])?.activate();
  } catch (error) {
    for (const name of names) workbook.deleteDefinedName(name);
    before.activate();
    for (const sheet of added) {
      for (const { id } of sheet.getSubTableInfos()) await sheet.removeTable(id);
      memory.delete(sheet.getSheetId());
      workbook.deleteSheet(sheet);
    }
    if (run.signal?.aborted) return unavailable("Stopped; nothing was written.");
    const why = error instanceof Error ? error.message : String(error);
    return unavailable(`The page could not write the sheets, and took back what it had begun: ${why}`);
  }
  run.progress?.(1);
  const charts = plan.sheets.some((sheet) => sheet.charts.length > 0);
  const seen = plan.sheets.filter(({ hidden }) => !hidden);
  return { sheets: seen.map(({ name }) => name), notes: charts ? [CHARTS_AS_PICTURES] : [] };
}

/** All that a sheet has beside its cells. Hidden comes last, for only a sheet in view can be dressed. */
async function dress(grid: Grid, workbook: Workbook, sheet: Sheet, plan: SheetPlan, memory: Memory) {
  addValidations(grid, sheet, plan);
  addConditions(sheet, plan);
  addNotes(sheet, plan);
  await addCharts(workbook, sheet, plan.charts);
  memory.set(sheet.getSheetId(), { charts: plan.charts, ...(plan.print && { print: plan.print }) });
  if (plan.hidden) sheet.hideSheet();
}

/** Waits until every formula has its answer. */
async function calculated(grid: Grid): Promise<void> {
  await grid.getFormula().onCalculationResultApplied();
}

function nameInUse(workbook: Workbook, plan: WorkbookPlan): string | undefined {
  const { sheets, names } = takenIn(workbook);
  const used = new Set([...sheets, ...names].map((name) => name.toLowerCase()));
  const wanted = [
    ...plan.sheets.flatMap(({ name, tables }) => [name, ...tables.map((table) => table.name)]),
    ...plan.names.map(({ name }) => name),
  ];
  return wanted.find((name) => used.has(name.toLowerCase()));
}
