import { strFromU8, unzipSync } from "fflate";
import { type Cell, dateToSerial, readXlsx, type Workbook } from "hucre";
import { withoutPrefixes } from "../../../src/hosts/file/file-formula.ts";
import { areaName, cellName, columnName } from "../../../src/sheets/a1.ts";
import type {
  CellContents,
  PrintContents,
  SheetContents,
  ValidationContents,
  WorkbookContents,
} from "../../workbook-contents.ts";
import { contentsOfFileChart } from "./contents-of-file-chart.ts";
import { lookOfFileStyle } from "./look-of-file-style.ts";

export type FileSheet = Workbook["sheets"][number];

/** What an .xlsx file holds. Charts are read from the file's parts as well, for what the reader leaves out. */
export async function contentsOfXlsx(bytes: Uint8Array): Promise<WorkbookContents> {
  const workbook = await readXlsx(bytes, { readStyles: true });
  const parts = unzipSync(bytes);
  const part = (path: string) => (parts[path] ? strFromU8(parts[path]) : "");
  let chartsBefore = 0;
  const sheets = workbook.sheets.map((sheet, i) => {
    const drawing = part(`xl/drawings/drawing${i + 1}.xml`);
    const charts = (sheet.charts ?? []).map((chart, n) =>
      contentsOfFileChart(chart, part(`xl/charts/chart${++chartsBefore}.xml`), drawing, n),
    );
    return { ...sheetContents(sheet), charts };
  });
  return {
    sheets,
    names: Object.fromEntries((workbook.namedRanges ?? []).map(({ name, range }) => [name, range])),
    active: workbook.sheets[workbook.activeSheet ?? 0]!.name,
  };
}

function sheetContents(sheet: FileSheet): Omit<SheetContents, "charts"> {
  return {
    name: sheet.name,
    hidden: sheet.hidden ?? false,
    cells: cellsOf(sheet),
    widths: Object.fromEntries(
      (sheet.columns ?? []).flatMap(({ width }, i) => (width === undefined ? [] : [[columnName(i), width]])),
    ),
    heights: Object.fromEntries(
      [...(sheet.rowDefs ?? [])].flatMap(([row, { height }]) =>
        height === undefined ? [] : [[row + 1, height]],
      ),
    ),
    merges: (sheet.merges ?? [])
      .map(({ startRow, startCol, endRow, endCol }) =>
        areaName({
          row: startRow,
          column: startCol,
          rows: endRow - startRow + 1,
          columns: endCol - startCol + 1,
        }),
      )
      .sort(),
    gridlines: sheet.view?.showGridLines ?? true,
    frozen: sheet.freezePane
      ? { rows: sheet.freezePane.rows ?? 0, columns: sheet.freezePane.columns ?? 0 }
      : null,
    tables: (sheet.tables ?? []).map(({ name, range, columns, showAutoFilter, showRowStripes }) => ({
      name,
      area: range ?? "",
      headings: columns.map((column) => column.name),
      filterButtons: showAutoFilter ?? false,
      bands: showRowStripes ?? false,
    })),
    validations: validationsOf(sheet),
    conditions: (sheet.conditionalRules ?? []).map(({ range, formula, style }) => ({
      area: range,
      formula: withoutPrefixes(String(formula)),
      color: `#${style?.font?.color?.rgb?.toLowerCase()}`,
      fill: style?.fill?.type === "pattern" ? `#${style.fill.bgColor?.rgb?.toLowerCase()}` : null,
      bold: style?.font?.bold ?? false,
      strike: style?.font?.strikethrough ?? false,
    })),
    print: printOf(sheet),
  };
}

function cellsOf(sheet: FileSheet): Record<string, CellContents> {
  const cells: Record<string, CellContents> = {};
  sheet.rows.forEach((row, r) => {
    row.forEach((value, c) => {
      if (value !== null)
        cells[cellName(r, c)] = { value: value instanceof Date ? dateToSerial(value) : value };
    });
  });
  for (const [key, cell] of sheet.cells ?? []) {
    const [row, column] = key.split(",").map(Number);
    const name = cellName(row!, column!);
    const contents = { ...cells[name], ...cellContents(cell) };
    if (Object.keys(contents).length > 0) cells[name] = contents;
  }
  return cells;
}

function cellContents({ formula, formulaRef, formulaDynamic, style, comment }: Cell): CellContents {
  const look = lookOfFileStyle(style);
  return {
    ...(formula === undefined ? {} : { formula: withoutPrefixes(formula) }),
    ...(formulaDynamic ? { spills: formulaRef } : {}),
    ...(look ? { look } : {}),
    ...(style?.numFmt && style.numFmt !== "General" ? { format: style.numFmt } : {}),
    ...(comment ? { note: comment.text } : {}),
  };
}

function validationsOf(sheet: FileSheet): ValidationContents[] {
  const all = (sheet.dataValidations ?? []).map((rule): ValidationContents => {
    const { range: area, values, formula1, formula2, errorMessage: message = "" } = rule;
    if (rule.type !== "list") {
      return { area, kind: "number", least: Number(formula1), most: Number(formula2), message };
    }
    if (values?.join() === "TRUE,FALSE") return { area, kind: "tick" };
    return {
      area,
      kind: "list",
      choices: (values ?? []).map((choice) => choice.replaceAll('""', '"')),
      message,
    };
  });
  return all.sort((a, b) => (a.area < b.area ? -1 : 1));
}

function printOf({ pageSetup, headerFooter }: FileSheet): PrintContents | null {
  if (!pageSetup?.orientation) return null;
  return {
    landscape: pageSetup.orientation === "landscape",
    area: pageSetup.printArea?.replaceAll("$", "") ?? null,
    pagesWide: pageSetup.fitToWidth ?? 0,
    pagesTall: pageSetup.fitToHeight ?? 0,
    titleRows: pageSetup.printTitlesRow?.replaceAll("$", "") ?? null,
    footer: headerFooter?.oddFooter?.replace(/^&C/, "").replaceAll("&&", "&") ?? null,
  };
}
