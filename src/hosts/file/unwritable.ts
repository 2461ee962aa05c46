import { invalid, type Problem } from "../../outcome/problem.ts";
import { areaName, cellName } from "../../sheets/a1.ts";
import { overlap } from "../../sheets/overlap.ts";
import type { SheetPlan, WorkbookPlan } from "../../sheets/plan.ts";
import { spillsOf } from "../../sheets/spills.ts";
import { tableHeadings } from "./table-headings.ts";

/** Limits of the file format. Source: "Excel specifications and limits", support.microsoft.com. */
const ROWS = 1_048_576;
const COLUMNS = 16_384;
const CHARACTERS = 32_767;
const FORMULA_CHARACTERS = 8_192;

/** The first thing in a plan that no .xlsx file could hold, or null. */
export function unwritable(plan: WorkbookPlan): Problem | null {
  const names = new Set(plan.sheets.map(({ name }) => name.toLowerCase()));
  if (plan.sheets.length === 0) return invalid("A workbook needs at least one sheet.");
  if (names.size < plan.sheets.length) return invalid("Two sheets of the workbook have the same name.");
  if (!plan.sheets.some(({ name, hidden }) => name === plan.active && !hidden)) {
    return invalid(`The sheet to show first, "${plan.active}", is hidden or not in the workbook.`);
  }
  for (const sheet of plan.sheets) {
    const problem = unwritableCell(sheet) ?? unwritableTable(sheet) ?? unwritableSpill(sheet);
    if (problem) return problem;
  }
  return null;
}

function unwritableCell(sheet: SheetPlan): Problem | null {
  for (const { row, column, cells } of sheet.blocks) {
    if (row + cells.length > ROWS || column + (cells[0]?.length ?? 0) > COLUMNS) {
      return invalid(`Sheet "${sheet.name}" is larger than a file's ${ROWS} rows by ${COLUMNS} columns.`);
    }
    for (const [i, line] of cells.entries()) {
      for (const [j, value] of line.entries()) {
        const reason = unwritableValue(value);
        if (reason) return invalid(`Cell ${cellName(row + i, column + j)} of "${sheet.name}" ${reason}.`);
      }
    }
  }
  return null;
}

function unwritableValue(value: SheetPlan["blocks"][number]["cells"][number][number]): string | null {
  if (typeof value === "number")
    return Number.isFinite(value) ? null : `holds ${value}, which is not a figure`;
  if (typeof value === "string") {
    return value.length > CHARACTERS ? `holds more than ${CHARACTERS} characters` : null;
  }
  if (typeof value !== "object" || value === null) return null;
  if (value.formula.length > FORMULA_CHARACTERS) {
    return `has a formula of more than ${FORMULA_CHARACTERS} characters`;
  }
  const answers = [value.value, ...(value.spills?.flat() ?? [])];
  return answers.map(unwritableValue).find((reason) => reason !== null) ?? null;
}

/** A formula cannot fill cells in which something stands: a spreadsheet would answer #SPILL!. */
function unwritableSpill(sheet: SheetPlan): Problem | null {
  for (const { area, answers } of spillsOf(sheet)) {
    const place = `The formula in ${cellName(area.row, area.column)} of "${sheet.name}"`;
    if (answers.some((line) => line.length !== area.columns) || area.rows * area.columns === 0) {
      return invalid(`${place} has answers that are no rectangle.`);
    }
    const inTheWay = sheet.blocks.some(({ row, column, cells }) =>
      cells.some((line, i) =>
        line.some(
          (value, j) =>
            value !== null &&
            (row + i !== area.row || column + j !== area.column) &&
            overlap({ row: row + i, column: column + j, rows: 1, columns: 1 }, area),
        ),
      ),
    );
    const covered = [...sheet.merges, ...sheet.tables.map((table) => table.area)];
    if (inTheWay || covered.some((other) => overlap(other, area))) {
      return invalid(`${place} fills ${areaName(area)}, where something else stands.`);
    }
  }
  return null;
}

function unwritableTable(sheet: SheetPlan): Problem | null {
  for (const table of sheet.tables) {
    const headings = tableHeadings(table, sheet);
    const texts = headings.filter((heading) => typeof heading === "string" && heading !== "");
    const different = new Set(texts.map((text) => String(text).toLowerCase()));
    if (different.size < headings.length || table.area.rows < 2) {
      return invalid(
        `Table "${table.name}" at ${areaName(table.area)} needs a row under headings that are texts, each once.`,
      );
    }
  }
  return null;
}
