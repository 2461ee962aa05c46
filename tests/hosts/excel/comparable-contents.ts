import type { WorkbookContents } from "../../workbook-contents.ts";

/**
 * Contents without what the workbook in memory cannot hold: it does not calculate, and the spreadsheet's service
 * keeps no description of a chart.
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
