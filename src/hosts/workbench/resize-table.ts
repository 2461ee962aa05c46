import { SetSheetTableMutation } from "@univerjs/preset-sheets-table";
import type { Area } from "../../sheets/plan.ts";
import type { Grid, Workbook } from "./grid.ts";
import { gridRange } from "./grid-range.ts";
import { tableOf } from "./table-cells.ts";

/** Lets a table end elsewhere; its headings stay where they are. Throws where the grid does not follow. */
export async function resizeTable(grid: Grid, workbook: Workbook, name: string, area: Area): Promise<void> {
  const found = tableOf(workbook, name);
  if (!found) throw new Error(`the table ${name} is gone`);
  const same = found.area.rows === area.rows && found.area.columns === area.columns;
  if (same) return;
  const done = await grid.executeCommand(SetSheetTableMutation.id, {
    unitId: workbook.getId(),
    subUnitId: found.sheet.getSheetId(),
    tableId: found.id,
    config: { updateRange: { newRange: gridRange(area) } },
  });
  const now = tableOf(workbook, name)?.area;
  if (!done || now?.rows !== area.rows || now.columns !== area.columns) {
    throw new Error(`the grid refused to resize the table ${name}`);
  }
}
