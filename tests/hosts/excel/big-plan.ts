import type { CellValue, WorkbookPlan } from "../../../src/sheets/plan.ts";
import { planOfCells } from "../../sheets/plan-of-cells.ts";

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
  return planOfCells([headings, ...rows], {
    name: "Shots",
    styles: [{ area: { row: 0, column: 0, rows: 1, columns: COLUMNS }, style: "heading" }],
    formats: [{ area: { row: 1, column: 1, rows: shots, columns: COLUMNS - 1 }, format: "0.0" }],
    tables: [{ name: "Shots", area: { row: 0, column: 0, rows: shots + 1, columns: COLUMNS } }],
  });
}
