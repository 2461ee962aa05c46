import type { WorkbookPlan } from "../src/sheets/plan.ts";
import type { TableCell, TableCells } from "../src/sheets/table-change.ts";

/** The tables of a plan as their cells: answers for formulas, `null` for empty cells. */
export function tablesOfPlan(plan: WorkbookPlan): [string, TableCells][] {
  return plan.sheets.flatMap((sheet) =>
    sheet.tables.map(({ name, area }): [string, TableCells] => {
      const cells = Array.from({ length: area.rows }, () => new Array<TableCell>(area.columns).fill(null));
      for (const block of sheet.blocks) {
        for (const [r, line] of block.cells.entries()) {
          for (const [c, cell] of line.entries()) {
            const row = cells[block.row + r - area.row];
            const column = block.column + c - area.column;
            if (!row || column < 0 || column >= area.columns) continue;
            row[column] = typeof cell === "object" && cell !== null ? cell.value : cell;
          }
        }
      }
      return [name, { headings: cells[0]!.map(String), rows: cells.slice(1) }];
    }),
  );
}
