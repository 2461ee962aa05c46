import type { SheetPlan } from "../../sheets/plan.ts";
import type { Sheet } from "./grid.ts";

const WIDTH = 220;
const LINE = 20;
const LETTERS_A_LINE = 32;

/** Notes that open when their cell is pointed at, as tall as their text. */
export function addNotes(sheet: Sheet, plan: SheetPlan): void {
  for (const { row, column, text } of plan.notes) {
    const lines = text
      .split("\n")
      .reduce((sum, line) => sum + Math.ceil((line.length || 1) / LETTERS_A_LINE), 0);
    sheet.getRange(row, column).createOrUpdateNote({
      id: `note-${row}-${column}`,
      row,
      col: column,
      note: text,
      width: WIDTH,
      height: (lines + 1) * LINE,
      show: false,
    });
  }
}
