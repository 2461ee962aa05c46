import type { WorkbookContents } from "../../workbook-contents.ts";

/**
 * Contents without what the workbook in memory cannot hold: it does not calculate, and the spreadsheet's service
 * keeps no description of a chart. The formulas are compared; what they answer is held to the plan by LibreOffice,
 * which calculates the same ones anew in `tests/libreoffice`.
 */
export function comparableContents(contents: WorkbookContents): WorkbookContents {
  return {
    ...contents,
    sheets: contents.sheets.map((sheet) => ({
      ...sheet,
      cells: Object.fromEntries(
        Object.entries(sheet.cells).map(([name, { value, ...cell }]) => [
          name,
          cell.formula === undefined && value !== undefined ? { ...cell, value } : cell,
        ]),
      ),
      charts: sheet.charts.map((chart) => ({ ...chart, alt: "" })),
    })),
  };
}
