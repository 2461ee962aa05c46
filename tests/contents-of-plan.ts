import { areaName, cellName, columnName, sheetAreaName } from "../src/sheets/a1.ts";
import type {
  Area,
  AxisPlan,
  CellValue,
  ChartPlan,
  SeriesPlan,
  SheetPlan,
  WorkbookPlan,
} from "../src/sheets/plan.ts";
import { spillsOf } from "../src/sheets/spills.ts";
import { CONDITION_STYLES, INK, RULE, STYLES } from "../src/sheets/styles.ts";
import type {
  AxisContents,
  CellContents,
  ChartContents,
  PrintContents,
  SeriesContents,
  SheetContents,
  ValidationContents,
  WorkbookContents,
} from "./workbook-contents.ts";

/** What a workbook should hold after a host has carried the plan out. */
export function contentsOfPlan(plan: WorkbookPlan): WorkbookContents {
  return {
    sheets: plan.sheets.map(sheetContents),
    names: Object.fromEntries(plan.names.map(({ name, at }) => [name, sheetAreaName(at)])),
    active: plan.active,
  };
}

function sheetContents(sheet: SheetPlan): SheetContents {
  return {
    name: sheet.name,
    hidden: sheet.hidden,
    cells: cellsOf(sheet),
    widths: Object.fromEntries(
      sheet.widths.flatMap(({ column, columns, characters }) =>
        range(column, columns).map((each) => [columnName(each), characters]),
      ),
    ),
    heights: Object.fromEntries(
      sheet.heights.flatMap(({ row, rows, points }) =>
        range(row, rows).map((each) => [`${each + 1}`, points]),
      ),
    ),
    merges: sheet.merges.map((area) => areaName(area)).sort(),
    gridlines: sheet.tables.length > 0,
    frozen: sheet.frozen ?? null,
    tables: sheet.tables.map(({ name, area }) => ({
      name,
      area: areaName(area),
      headings: range(area.column, area.columns).map((c) => String(valueAt(sheet, area.row, c))),
      filterButtons: true,
      bands: true,
    })),
    validations: validationsOf(sheet),
    conditions: sheet.conditions.map(({ area, formula, style }) => {
      const { color, fill, bold, strike } = CONDITION_STYLES[style];
      return {
        area: areaName(area),
        formula,
        color,
        fill: fill ?? null,
        bold: bold ?? false,
        strike: strike ?? false,
      };
    }),
    charts: sheet.charts.map(chartOf),
    print: printOf(sheet),
  };
}

function cellsOf(sheet: SheetPlan): Record<string, CellContents> {
  const cells: Record<string, CellContents> = {};
  const add = (row: number, column: number, more: CellContents) => {
    const name = cellName(row, column);
    cells[name] = { ...cells[name], ...more };
  };
  for (const { row, column, cells: lines } of sheet.blocks) {
    lines.forEach((line, i) => {
      line.forEach((value, j) => {
        if (value !== null) add(row + i, column + j, contentsOfValue(value));
      });
    });
  }
  for (const { area, answers } of spillsOf(sheet)) {
    each(area, (r, c) => add(r, c, { value: answers[r - area.row]![c - area.column]! }));
    add(area.row, area.column, { spills: areaName(area) });
  }
  for (const { area, style } of sheet.styles) each(area, (r, c) => add(r, c, { look: STYLES[style] }));
  for (const { area, format } of sheet.formats) each(area, (r, c) => add(r, c, { format }));
  for (const { row, column, text } of sheet.notes) add(row, column, { note: text });
  return Object.fromEntries(
    Object.entries(cells)
      .map(([name, { look, format, ...cell }]): [string, CellContents] => [
        name,
        {
          ...cell,
          ...(look && look !== STYLES.plain ? { look } : {}),
          ...(format && format !== "General" ? { format } : {}),
        },
      ])
      .filter(([, cell]) => Object.keys(cell).length > 0),
  );
}

function contentsOfValue(value: Exclude<CellValue, null>): CellContents {
  return typeof value === "object" ? { formula: value.formula, value: value.value } : { value };
}

function valueAt(sheet: SheetPlan, row: number, column: number): CellValue {
  const block = sheet.blocks.find((b) => b.cells[row - b.row]?.[column - b.column] !== undefined);
  return block?.cells[row - block.row]?.[column - block.column] ?? null;
}

function validationsOf(sheet: SheetPlan): ValidationContents[] {
  const ticks = sheet.ticks.map((area): ValidationContents => ({ area: areaName(area), kind: "tick" }));
  const others = sheet.validations.map(
    (plan): ValidationContents => ({ ...plan, area: areaName(plan.area) }),
  );
  return [...ticks, ...others].sort((a, b) => (a.area < b.area ? -1 : 1));
}

function chartOf(chart: ChartPlan): ChartContents {
  const { name, title, alt, area, kind, x, y, series, legend } = chart;
  return {
    name,
    title,
    alt,
    area: areaName(area),
    kind,
    x: axisOf(x),
    y: axisOf(y),
    legend,
    look: {
      background: "#ffffff",
      border: RULE,
      titleSize: 13,
      titleColor: INK,
      axisTitleSizes: [x, y].filter(({ title }) => title !== "").map(() => 10),
      labelColors: [INK, INK],
      gridline: "#ddd9cc",
      gridlineWeight: 0.5,
    },
    series: series.map((one) => seriesOf(one, kind)),
  };
}

function axisOf({ title, least, most, format, hideLabels }: AxisPlan): AxisContents {
  return { title, least: least ?? null, most: most ?? null, format, labels: !hideLabels };
}

/** A bar has neither marker nor line, whatever the plan says of them. */
function seriesOf(series: SeriesPlan, kind: ChartPlan["kind"]): SeriesContents {
  const { name, x, y, color, marker, markerSize, line, unlisted } = series;
  const points = kind === "scatter";
  return {
    name,
    x: sheetAreaName(x),
    y: sheetAreaName(y),
    color,
    marker: points ? marker : "none",
    markerSize: points && marker !== "none" ? markerSize : 0,
    line: points ? line : "none",
    listed: !unlisted,
  };
}

function printOf({ print }: SheetPlan): PrintContents | null {
  if (!print) return null;
  const { landscape, area, pagesWide, pagesTall, titleRows, footer } = print;
  return {
    landscape,
    area: area ? areaName(area) : null,
    pagesWide,
    pagesTall,
    titleRows: titleRows ? `${titleRows.row + 1}:${titleRows.row + titleRows.rows}` : null,
    footer: footer ?? null,
  };
}

function range(first: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => first + i);
}

function each(area: Area, visit: (row: number, column: number) => void): void {
  for (const row of range(area.row, area.rows)) {
    for (const column of range(area.column, area.columns)) visit(row, column);
  }
}
