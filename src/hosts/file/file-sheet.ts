import type { ColumnDef, MergeRange, RowDef, TableDefinition, WriteSheet } from "hucre";
import { areaName } from "../../sheets/a1.ts";
import type { Area, SheetPlan, TablePlan } from "../../sheets/plan.ts";
import { showsGridlines } from "../../sheets/shows-gridlines.ts";
import { fileCells } from "./file-cells.ts";
import { fileChart } from "./file-chart.ts";
import { fileFormula } from "./file-formula.ts";
import { filePrint } from "./file-print.ts";
import { fileConditionStyle } from "./file-style.ts";
import { fileAttribute, fileText } from "./file-text.ts";
import { fileTicks, fileValidation, fitsInFile } from "./file-validation.ts";
import type { LongRun } from "./long-runs.ts";
import { tableHeadings } from "./table-headings.ts";

/** A sheet in the words of the library that writes the file, and the rows that are kept from it. */
export interface FileSheet {
  readonly sheet: WriteSheet;
  readonly runs: readonly LongRun[];
}

/** A planned sheet in the words of the library that writes the file. */
export function fileSheet(sheet: SheetPlan): FileSheet {
  const { rows, columnStyles, cells, runs } = fileCells(sheet);
  const written: WriteSheet = {
    name: sheet.name,
    rows,
    cells,
    columns: fileColumns(sheet, columnStyles),
    rowDefs: fileHeights(sheet),
    merges: sheet.merges.map(fileMerge),
    ...(sheet.frozen ? { freezePane: { rows: sheet.frozen.rows, columns: sheet.frozen.columns } } : {}),
    tables: sheet.tables.map((table) => fileTable(table, sheet)),
    dataValidations: [
      ...sheet.ticks.map(fileTicks),
      ...sheet.validations.filter(fitsInFile).map(fileValidation),
    ],
    conditionalRules: sheet.conditions.map(({ area, formula, style }, i) => ({
      type: "expression",
      priority: i + 1,
      formula: fileFormula(fileText(formula)),
      style: fileConditionStyle(style),
      range: areaName(area),
    })),
    charts: sheet.charts.map(fileChart),
    ...(sheet.print ? filePrint(sheet.print) : {}),
    view: { showGridLines: showsGridlines(sheet) },
    hidden: sheet.hidden,
  };
  return { sheet: written, runs };
}

function fileColumns(sheet: SheetPlan, styles: readonly (ColumnDef["style"] | undefined)[]): ColumnDef[] {
  const count = Math.max(styles.length, ...sheet.widths.map(({ column, columns }) => column + columns));
  const columns = Array.from({ length: count }, (_, i): ColumnDef => {
    const style = styles[i];
    return style ? { style } : {};
  });
  for (const { column, columns: width, characters } of sheet.widths) {
    for (const each of columns.slice(column, column + width)) each.width = characters;
  }
  return columns;
}

function fileHeights(sheet: SheetPlan): Map<number, RowDef> {
  return new Map(
    sheet.heights.flatMap(({ row, rows, points }) =>
      Array.from({ length: rows }, (_, i): [number, RowDef] => [row + i, { height: points }]),
    ),
  );
}

function fileMerge({ row, column, rows, columns }: Area): MergeRange {
  return { startRow: row, startCol: column, endRow: row + rows - 1, endCol: column + columns - 1 };
}

function fileTable(table: TablePlan, sheet: SheetPlan): TableDefinition {
  return {
    name: table.name,
    range: areaName(table.area),
    columns: tableHeadings(table, sheet).map((heading) => ({ name: fileAttribute(String(heading)) })),
    style: "TableStyleLight1",
    showRowStripes: true,
    showAutoFilter: true,
  };
}
