import type { CellValue, SheetPlan } from "../../src/sheets/plan.ts";

/** What a plan puts into a cell; null where it puts nothing. */
export function cellAt(sheet: SheetPlan, row: number, column: number): CellValue {
  for (const block of sheet.blocks) {
    const value = block.cells[row - block.row]?.[column - block.column];
    if (value !== undefined) return value;
  }
  return null;
}

/** The first cell that holds this text, as row and column. */
export function findText(sheet: SheetPlan, text: string): { row: number; column: number } {
  for (const block of sheet.blocks) {
    for (const [i, line] of block.cells.entries()) {
      const j = line.indexOf(text);
      if (j >= 0) return { row: block.row + i, column: block.column + j };
    }
  }
  throw new Error(`no cell holds "${text}"`);
}
