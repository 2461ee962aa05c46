import { cellName } from "../../sheets/a1.ts";
import type { SheetPlan } from "../../sheets/plan.ts";
import { CALL, type Step } from "./step.ts";
import { supports } from "./supports.ts";

/** Notes on cells; as comments in a spreadsheet that has only these, and left out of one that has neither. */
export function writeNotes(sheet: SheetPlan, said: Set<string>): Step[] {
  if (sheet.notes.length === 0) return [];
  const notes = supports("1.18") && "notes" in Excel.Worksheet.prototype;
  if (!notes && !supports("1.10")) {
    said.add("This spreadsheet takes no notes from add-ins; the explanations on single cells were left out.");
    return [];
  }
  if (!notes) said.add("The explanations on single cells were written as comments in your name.");
  return sheet.notes.map(({ row, column, text }) => ({
    bytes: 2 * CALL + 4 * text.length,
    queue: (desk) => {
      if (notes) desk.sheet(sheet.name).notes.add(cellName(row, column), text);
      else desk.workbook.comments.add(desk.range(sheet.name, { row, column, rows: 1, columns: 1 }), text);
    },
  }));
}
