import type { CellValue, SheetPlan, WorkbookPlan } from "../../src/sheets/plan.ts";
import { EMPTY_SHEET } from "./empty-sheet.ts";

/** A plan of one sheet, "Cells", with these cells from A1 on and whatever else is given. */
export function planOfCells(
  cells: readonly (readonly CellValue[])[],
  more: Partial<SheetPlan> = {},
): WorkbookPlan {
  const sheet: SheetPlan = {
    ...EMPTY_SHEET,
    name: "Cells",
    blocks: [{ row: 0, column: 0, cells }],
    ...more,
  };
  return { sheets: [sheet], names: [], active: sheet.name };
}
