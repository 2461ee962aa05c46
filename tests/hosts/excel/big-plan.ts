import type { CellValue, SheetPlan, WorkbookPlan } from "../../../src/sheets/plan.ts";

const COLUMNS = 12;

/** One sheet with a table of so many shots and 12 columns, figures as a launch monitor gives them. */
export function bigPlan(shots: number): WorkbookPlan {
  const headings = Array.from({ length: COLUMNS }, (_, column) =>
    column === 0 ? "Build" : `Figure ${column}`,
  );
  const rows = Array.from({ length: shots }, (_, shot): CellValue[] => [
    `Build ${(shot % 3) + 1}`,
    ...Array.from(
      { length: COLUMNS - 1 },
      (_, column) => Math.round(1000 * Math.abs(Math.sin(shot * 12 + column))) / 10,
    ),
  ]);
  const sheet: SheetPlan = {
    name: "Shots",
    blocks: [{ row: 0, column: 0, cells: [headings, ...rows] }],
    styles: [{ area: { row: 0, column: 0, rows: 1, columns: COLUMNS }, style: "heading" }],
    formats: [{ area: { row: 1, column: 1, rows: shots, columns: COLUMNS - 1 }, format: "0.0" }],
    widths: [],
    heights: [],
    merges: [],
    tables: [{ name: "Shots", area: { row: 0, column: 0, rows: shots + 1, columns: COLUMNS } }],
    ticks: [],
    validations: [],
    conditions: [],
    charts: [],
    notes: [],
    hidden: false,
  };
  return { sheets: [sheet], names: [], active: "Shots" };
}
