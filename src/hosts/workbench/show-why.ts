import type { Explain } from "./cell-function.ts";
import type { Grid, Workbook } from "./grid.ts";

/**
 * Says why the selected cell shows an error instead of a figure. The spreadsheet shows a function's sentence at the
 * cell; the grid has no place for it, so it stands above the grid.
 */
export function showWhy(line: HTMLElement) {
  const sentences = new Map<string, string>();
  const explain: Explain = (sheetId, row, column, why) => {
    const key = [sheetId, row, column].join();
    if (why) sentences.set(key, why);
    else sentences.delete(key);
  };
  const follow = (grid: Grid, workbook: Workbook) => {
    const show = () => {
      const cell = workbook.getActiveCell();
      const value = String(cell?.getRawValue() ?? "");
      const why = cell && sentences.get([cell.getSheetId(), cell.getRow(), cell.getColumn()].join());
      line.textContent = why && /^#(VALUE!|N\/A)$/.test(value) ? `${value} ${why}` : "";
      // One that scrolls can be scrolled without a mouse as well.
      line.tabIndex = line.scrollHeight > line.clientHeight ? 0 : -1;
    };
    grid.addEvent(grid.Event.SelectionChanged, show);
    grid.getFormula().calculationEnd(() => setTimeout(show, 50));
  };
  return { explain, follow };
}
