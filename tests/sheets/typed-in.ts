import type { CellValue, WorkbookPlan } from "../../src/sheets/plan.ts";

/** The plan as it would be after someone typed these values into its cells. `cells`: row, column, value. */
export function typedIn(
  plan: WorkbookPlan,
  sheet: string,
  cells: readonly (readonly [row: number, column: number, value: CellValue])[],
): WorkbookPlan {
  const sheets = plan.sheets.map((one) => {
    if (one.name !== sheet) return one;
    const blocks = one.blocks.map((block) => ({
      ...block,
      cells: block.cells.map((line, i) =>
        line.map((value, j) => {
          const typed = cells.find(([row, column]) => row === block.row + i && column === block.column + j);
          return typed ? typed[2] : value;
        }),
      ),
    }));
    return { ...one, blocks };
  });
  return { ...plan, sheets };
}
