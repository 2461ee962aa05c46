import type { WorkbookPlan } from "../../sheets/plan.ts";
import { CALL, type Step } from "./step.ts";
import { writeBlocks, writeTableFormulas } from "./write-blocks.ts";
import { writeCharts } from "./write-charts.ts";
import { writeTicks, writeValidations } from "./write-checks.ts";
import { writeConditions } from "./write-conditions.ts";
import { writeLayout } from "./write-layout.ts";
import { writeFormats, writeLooks } from "./write-looks.ts";
import { writeNotes } from "./write-notes.ts";
import { writePrint } from "./write-print.ts";
import { writeTables } from "./write-tables.ts";

/**
 * Everything that writes a plan, in an order in which each step finds what it needs: sheets before formulas that
 * name them, names before formulas that use them, cells before the tables and charts over them, tables before
 * formulas that name tables, and activation last. What cannot be shown as planned is said in `notes`.
 */
export function planSteps(plan: WorkbookPlan, marks: readonly string[]): { steps: Step[]; notes: string[] } {
  const notes = new Set<string>();
  const { sheets } = plan;
  const steps = [
    ...sheets.map(({ name }, i) =>
      small((desk) => {
        desk.workbook.worksheets.add(marks[i]).name = name;
      }),
    ),
    ...plan.names.map(({ name, at }) =>
      small((desk) => desk.workbook.names.add(name, desk.range(at.sheet, at.area))),
    ),
    // Before the cells, so that no entry is shown or read in a format that changes afterwards.
    ...sheets.flatMap(writeFormats),
    ...sheets.flatMap((sheet) => writeBlocks(sheet, notes)),
    ...sheets.flatMap(writeTables),
    ...sheets.flatMap(writeTableFormulas),
    ...sheets.flatMap(writeLooks),
    ...sheets.flatMap(writeLayout),
    ...sheets.flatMap((sheet) => writeTicks(sheet, notes)),
    ...sheets.flatMap((sheet) => writeValidations(sheet, notes)),
    ...sheets.flatMap(writeConditions),
    ...sheets.flatMap((sheet) => writeCharts(sheet, notes)),
    ...sheets.flatMap((sheet) => writeNotes(sheet, notes)),
    ...sheets.flatMap(writePrint),
    ...sheets.filter(({ hidden }) => hidden).map(({ name }) => small((desk) => hide(desk.sheet(name)))),
    ...(plan.active ? [small((desk) => desk.sheet(plan.active).activate())] : []),
  ];
  return { steps, notes: [...notes] };
}

const small = (queue: (desk: Parameters<Step["queue"]>[0]) => unknown): Step => ({
  bytes: CALL,
  queue: (desk) => void queue(desk),
});

function hide(sheet: Excel.Worksheet): void {
  sheet.visibility = "Hidden";
}
