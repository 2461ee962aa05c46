import type { CellValue, SheetPlan, TablePlan } from "../../sheets/plan.ts";

/** What stands in the first row of a table; null where no block reaches. */
export function tableHeadings({ area }: TablePlan, sheet: SheetPlan): readonly CellValue[] {
  return Array.from({ length: area.columns }, (_, i) => {
    for (const block of sheet.blocks) {
      const value = block.cells[area.row - block.row]?.[area.column + i - block.column];
      if (value !== undefined) return value;
    }
    return null;
  });
}
