import { AddSheetTableMutation } from "@univerjs/preset-sheets-table";
import type { SheetPlan } from "../../sheets/plan.ts";
import { GREEN, PAPER } from "../../sheets/styles.ts";
import type { Grid, Sheet, Workbook } from "./grid.ts";
import { gridRange } from "./grid-range.ts";
import { readCells } from "./read-cells.ts";

const THEME = "bench";

/** Tables with filter buttons and bands in the house colours. Throws where the grid refuses one. */
export async function addTables(
  grid: Grid,
  workbook: Workbook,
  sheet: Sheet,
  plan: SheetPlan,
): Promise<void> {
  if (plan.tables.length > 0 && !workbook.getRegisteredRangeThemes().includes(THEME)) {
    const heading = { bg: { rgb: GREEN }, cl: { rgb: "#ffffff" }, bl: 1 };
    const bands = { firstRowStyle: { bg: { rgb: "#ffffff" } }, secondRowStyle: { bg: { rgb: PAPER } } };
    workbook.registerRangeTheme(workbook.createRangeThemeStyle(THEME, { headerRowStyle: heading, ...bands }));
  }
  for (const { name, area } of plan.tables) {
    const headings = readCells(sheet, { ...area, rows: 1 })[0] ?? [];
    const columns = headings.map((heading, i) => ({
      id: `${name}-${i}`,
      displayName: String(heading ?? ""),
    }));
    // The step beneath the grid's own command: the command refuses a table called as a sheet is, or calls it "Table1".
    const added = await grid.executeCommand(AddSheetTableMutation.id, {
      unitId: workbook.getId(),
      subUnitId: sheet.getSheetId(),
      name,
      range: gridRange(area),
      tableId: name,
      header: columns.map(({ displayName }) => displayName),
      options: { tableStyleId: THEME, showHeader: true, columns },
    });
    if (!added) throw new Error(`the grid refused the table ${name}`);
  }
}
