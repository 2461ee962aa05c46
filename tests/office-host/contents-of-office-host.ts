import { areaName, cellName, columnName } from "../../src/sheets/a1.ts";
import type { Area } from "../../src/sheets/plan.ts";
import type {
  CellContents,
  SheetContents,
  ValidationContents,
  WorkbookContents,
} from "../workbook-contents.ts";
import { COLUMNS, ROWS } from "./addresses.ts";
import { contentsOfChart } from "./contents-of-chart.ts";
import { lookOfCell } from "./look-of-cell.ts";
import { spilledValue, spillsOn } from "./spills.ts";
import { type Bag, cellKey, type HeldSheet, type HeldWorkbook } from "./workbook.ts";

/**
 * What the workbook in memory holds, in the words that all hosts are compared in. Answers of formulas are left out,
 * for hardly anything calculates here, but cells that a formula fills have theirs; comments count as notes.
 */
export function contentsOfOfficeHost(
  workbook: HeldWorkbook,
  which: (name: string) => boolean = () => true,
): WorkbookContents {
  return {
    sheets: workbook.sheets
      .filter(({ bag }) => which(String(bag.Name)))
      .map((sheet) => contentsOfSheet(workbook, sheet)),
    names: Object.fromEntries([...workbook.names].map(([name, { formula }]) => [name, formula.slice(1)])),
    active: String(workbook.sheets.find(({ id }) => id === workbook.active)?.bag.Name),
  };
}

function contentsOfSheet(workbook: HeldWorkbook, sheet: HeldSheet): SheetContents {
  const { bag, tables, conditions, charts, merges, frozen, print } = sheet;
  return {
    name: String(bag.Name),
    hidden: bag.Visibility !== "Visible",
    cells: cellsOf(workbook, sheet),
    widths: sizes(
      sheet,
      "ColumnWidth",
      (area) => [area.column, area.columns],
      columnName,
      charactersOfPoints,
    ),
    heights: sizes(
      sheet,
      "RowHeight",
      (area) => [area.row, area.rows],
      (row) => `${row + 1}`,
      (points) => points,
    ),
    merges: merges.map((area) => areaName(area)).sort(),
    gridlines: bag.Gridlines !== false,
    frozen: frozen ?? null,
    tables: tables.map(({ area, bag: held }) => ({
      name: String(held.Name),
      area: areaName(area),
      headings: Array.from({ length: area.columns }, (_, i) =>
        String(sheet.cells.get(cellKey(area.row, area.column + i))?.value),
      ),
      filterButtons: held.ShowFilterButton === true,
      bands: held.ShowBandedRows === true,
    })),
    validations: validationsOf(sheet),
    conditions: conditions.map(({ area, bag: held }) => ({
      area: areaName(area),
      formula: String(held["Rule/Formula"]).replace(/^=/, ""),
      color: String(held["Format/Font/Color"]),
      fill: held["Format/Fill/Color"] ? String(held["Format/Fill/Color"]) : null,
      bold: held["Format/Font/Bold"] === true,
      strike: held["Format/Font/Strikethrough"] === true,
    })),
    charts: charts.map(contentsOfChart),
    print: printOf(print),
  };
}

function cellsOf(workbook: HeldWorkbook, sheet: HeldSheet): Record<string, CellContents> {
  const keys = new Set(sheet.cells.keys());
  for (const { area, property } of sheet.paints) {
    if (/^Format\/(ColumnWidth|RowHeight)|^Validation|^Control/.test(property)) continue;
    for (let r = 0; r < area.rows; r++) {
      for (let c = 0; c < area.columns; c++) keys.add(cellKey(area.row + r, area.column + c));
    }
  }
  const spills = spillsOn(workbook, sheet);
  const places = new Map(
    spills.map(({ area, blocked }) => [cellKey(area.row, area.column), blocked ? "#SPILL!" : areaName(area)]),
  );
  for (const { area, blocked } of spills) {
    for (let i = 0; !blocked && i < area.rows * area.columns; i++) {
      keys.add(cellKey(area.row + Math.floor(i / area.columns), area.column + (i % area.columns)));
    }
  }
  const cells: Record<string, CellContents> = {};
  for (const key of keys) {
    const [row, column] = [Math.floor(key / COLUMNS), key % COLUMNS];
    const held = sheet.cells.get(key);
    const filled = spilledValue(spills, row, column) as CellContents["value"];
    const { look, format } = lookOfCell(sheet, row, column);
    cells[cellName(row, column)] = {
      ...(held?.formula
        ? { formula: held.formula.slice(1) }
        : (held ?? filled) && { value: held?.value ?? filled }),
      ...(places.has(key) ? { spills: places.get(key) } : {}),
      ...(format !== "General" && { format }),
      ...(look && { look }),
    };
  }
  for (const [name, note] of [...sheet.notes, ...sheet.comments]) cells[name] = { ...cells[name], note };
  return Object.fromEntries(Object.entries(cells).filter(([, cell]) => Object.keys(cell).length > 0));
}

function sizes(
  sheet: HeldSheet,
  property: string,
  span: (area: Area) => [number, number],
  name: (index: number) => string,
  turn: (points: number) => number,
): Record<string, number> {
  return Object.fromEntries(
    sheet.paints
      .filter((coat) => coat.property === `Format/${property}`)
      .flatMap(({ area, value }) => {
        // Widths and heights belong to whole columns and rows, however few of their cells were named.
        const [first, count] = span(area);
        if (count >= Math.min(ROWS, COLUMNS)) throw new Error(`${property} set on a whole sheet`);
        return Array.from({ length: count }, (_, i) => [name(first + i), turn(value as number)]);
      }),
  );
}

/** Backwards from points: 0.75 points a pixel, 5 pixels of padding, 7 a digit (ECMA-376 part 1, 18.3.1.13). */
const charactersOfPoints = (points: number) => Math.round(((points / 0.75 - 5) / 7) * 1e9) / 1e9;

function validationsOf(sheet: HeldSheet): ValidationContents[] {
  const found = new Map<string, ValidationContents>();
  for (const { area, property, value } of sheet.paints) {
    const at = areaName(area);
    if (property === "Control") found.set(at, { area: at, kind: "tick" });
    if (property !== "Validation/Rule") continue;
    const prompt = sheet.paints.find(
      (coat) => coat.property === "Validation/Prompt" && areaName(coat.area) === at,
    );
    const message = (prompt?.value as { message: string } | undefined)?.message ?? "";
    const rule = value as { list?: { source: string }; decimal?: { formula1: number; formula2: number } };
    if (rule.list?.source === "TRUE,FALSE") found.set(at, { area: at, kind: "tick" });
    else if (rule.list)
      found.set(at, { area: at, kind: "list", choices: rule.list.source.split(","), message });
    else if (rule.decimal) {
      const { formula1: least, formula2: most } = rule.decimal;
      found.set(at, { area: at, kind: "number", least, most, message });
    }
  }
  return [...found.values()].sort((a, b) => (a.area < b.area ? -1 : 1));
}

function printOf(print: Bag): SheetContents["print"] {
  if (Object.keys(print).length === 0) return null;
  const zoom = (print.Zoom ?? {}) as { horizontalFitToPages?: number; verticalFitToPages?: number };
  const titles = print.TitleRows as Area | undefined;
  const footer = print["HeadersFooters/DefaultForAllPages/CenterFooter"] as string | undefined;
  return {
    landscape: print.Orientation === "Landscape",
    area: print.Area ? areaName(print.Area as Area) : null,
    pagesWide: zoom.horizontalFitToPages ?? 0,
    pagesTall: zoom.verticalFitToPages ?? 0,
    titleRows: titles ? `${titles.row + 1}:${titles.row + titles.rows}` : null,
    footer: footer?.replaceAll("&&", "&") ?? null,
  };
}
