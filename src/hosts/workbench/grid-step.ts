import type { ICellData, IMutationInfo, Nullable } from "@univerjs/core";
import { SetRangeCustomMetadataCommand, SetRangeValuesMutation } from "@univerjs/preset-sheets-core";
import { SetSheetTableMutation } from "@univerjs/preset-sheets-table";
import type { Area } from "../../sheets/plan.ts";
import type { Grid, Sheet } from "./grid.ts";
import { gridRange } from "./grid-range.ts";
import { spills } from "./read-cells.ts";

/** Cells by row and column; null takes a cell away. */
export type Cells = Record<number, Record<number, Nullable<ICellData>>>;

/** Something that the grid does, undoes and does again. */
export type GridStep = IMutationInfo;

/** Writes cells of one sheet. */
export function cellsStep(sheet: Sheet, cellValue: Cells): GridStep {
  const params = { ...placeOf(sheet), cellValue };
  if (!bringsNoFormula(sheet, cellValue)) return { id: SetRangeValuesMutation.id, params };
  // Before it writes cells the grid looks through all cells of all sheets, twice, for formulas that these might change.
  // Cells that come from this command of its own it knows to bring none. It recalculates what looks at them all the same.
  return {
    id: SetRangeValuesMutation.id,
    params: { ...params, trigger: SetRangeCustomMetadataCommand.id },
  };
}

/** Lets a table end elsewhere; its headings stay where they are. */
export function tableStep(sheet: Sheet, tableId: string, area: Area): GridStep {
  const params = { ...placeOf(sheet), tableId, config: { updateRange: { newRange: gridRange(area) } } };
  return { id: SetSheetTableMutation.id, params };
}

/** Throws where the grid refuses the step. */
export async function takeStep(grid: Grid, { id, params }: GridStep): Promise<void> {
  if (!(await grid.executeCommand(id, params))) throw new Error(`the grid refused ${id}`);
}

const placeOf = (sheet: Sheet) => ({
  unitId: sheet.getWorkbook().getUnitId(),
  subUnitId: sheet.getSheetId(),
});

/** Whether no formula is written, written over or spills over this sheet. */
function bringsNoFormula(sheet: Sheet, cells: Cells): boolean {
  if (Object.keys(spills(sheet) ?? {}).length > 0) return false;
  const matrix = sheet.getSheet().getCellMatrix();
  return Object.entries(cells).every(([row, line]) =>
    Object.entries(line).every(([column, cell]) => {
      const was = matrix.getValue(Number(row), Number(column));
      return !cell?.f && !cell?.si && !was?.f && !was?.si;
    }),
  );
}
