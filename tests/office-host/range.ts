import { areaName, cellName, sheetName } from "../../src/sheets/a1.ts";
import type { Area } from "../../src/sheets/plan.ts";
import { checked, overlap, parseCells, splitAddress } from "./addresses.ts";
import { collection } from "./collection.ts";
import { conditions } from "./conditions.ts";
import { enteredCell } from "./entered-cell.ts";
import { checkFormula } from "./formula-check.ts";
import { painted, paintStore } from "./painted.ts";
import { RANGE_FORMAT, VALIDATION } from "./range-shapes.ts";
import { invalidArgument, ServiceError } from "./service-error.ts";
import { shaped } from "./shapes.ts";
import { readOnly, type WireObject } from "./wire-object.ts";
import { cellKey, type HeldSheet, type HeldWorkbook } from "./workbook.ts";

const LONGEST_TEXT = 32_767;

/** A range that knows where it lies, for methods that are handed one. */
export interface RangeObject extends WireObject {
  readonly sheet: HeldSheet;
  readonly area: Area;
}

/** `Excel.Range` */
export function range(workbook: HeldWorkbook, sheet: HeldSheet, area: Area): RangeObject {
  const part = (rows: Partial<Area>) => range(workbook, sheet, checked({ ...area, ...rows }));
  const grid = (read: (row: number, column: number) => unknown) =>
    Array.from({ length: area.rows }, (_, r) =>
      Array.from({ length: area.columns }, (_, c) => read(area.row + r, area.column + c)),
    );
  const cell = (row: number, column: number) => sheet.cells.get(cellKey(row, column));
  const enter = (given: unknown) =>
    eachCell(area, given, (row, column, entry) => put(workbook, sheet, row, column, entry));
  const values = readOnly(() => grid((row, column) => cell(row, column)?.value ?? ""));
  const formulas = readOnly(() =>
    grid((row, column) => cell(row, column)?.formula ?? cell(row, column)?.value ?? ""),
  );
  return {
    type: "Range",
    sheet,
    area,
    kept: true,
    scalars: {
      Address: readOnly(() => `${bareSheetName(sheet)}!${areaName(area)}`),
      RowIndex: readOnly(() => area.row),
      ColumnIndex: readOnly(() => area.column),
      RowCount: readOnly(() => area.rows),
      ColumnCount: readOnly(() => area.columns),
      CellCount: readOnly(() => area.rows * area.columns),
      Values: { ...values, set: enter },
      Formulas: { ...formulas, set: enter },
      NumberFormat: {
        get: () => grid((row, column) => formatAt(sheet, row, column)),
        set: (given) => {
          if (typeof given === "string") paintStore(sheet, area, "").set("NumberFormat", given);
          else {
            eachCell(area, given, (row, column, format) =>
              paintStore(sheet, { row, column, rows: 1, columns: 1 }, "").set("NumberFormat", format),
            );
          }
        },
      },
      // Of ExcelApi 1.18, where tick boxes are.
      Control: {
        get: () => painted(sheet, area, "Control"),
        set: (given) => paintStore(sheet, area, "").set("Control", given),
      },
    },
    children: {
      Format: () => shaped("RangeFormat", RANGE_FORMAT, paintStore(sheet, area, "Format/")),
      DataValidation: () => shaped("DataValidation", VALIDATION, paintStore(sheet, area, "Validation/")),
      ConditionalFormats: () => conditions(workbook, sheet, area),
    },
    methods: {
      GetCell: (row: number, column: number) =>
        part({ row: area.row + row, column: area.column + column, rows: 1, columns: 1 }),
      GetResizedRange: (rows: number, columns: number) =>
        part({ rows: area.rows + rows, columns: area.columns + columns }),
      GetUsedRangeOrNullObject: () => usedRange(workbook, sheet, area),
      GetRow: (row: number) => part({ row: area.row + row, rows: 1 }),
      GetBoundingRect: (other: RangeObject) => range(workbook, sheet, around(area, other.area)),
      // The library asks this before it cuts a large array into writes of 1,500 cells.
      _ValidateArraySize: (rows: number, columns: number) => {
        if (rows !== area.rows || columns !== area.columns) throw wrongSize();
      },
      Merge: () => {
        if (sheet.merges.some((other) => overlap(other, area))) throw invalidArgument("merge over a merge");
        if (sheet.tables.some((table) => overlap(table.area, area)))
          throw invalidArgument("merge in a table");
        sheet.merges.push(area);
      },
      Select: () => {
        workbook.active = sheet.id;
        workbook.selection = [area];
      },
    },
  };
}

/** The range that an address names, on the given sheet unless it names another. */
export function rangeAt(workbook: HeldWorkbook, sheet: HeldSheet, address: string): RangeObject {
  const { sheet: other, cells } = splitAddress(address);
  const named = other === undefined ? sheet : workbook.sheets.find((one) => sameName(one, other));
  if (!named) throw invalidArgument(address);
  return range(workbook, named, parseCells(cells));
}

/** The least area within `within` that holds all cells with something in them, or null. */
export function usedRange(workbook: HeldWorkbook, sheet: HeldSheet, within: Area): RangeObject | null {
  let used: Area | undefined;
  for (const key of sheet.cells.keys()) {
    const at: Area = { row: Math.floor(key / 16_384), column: key % 16_384, rows: 1, columns: 1 };
    if (!overlap(at, within)) continue;
    used = used ? around(used, at) : at;
  }
  return used ? range(workbook, sheet, used) : null;
}

/** `Excel.RangeCollection` of the areas of a selection. */
export const ranges = (workbook: HeldWorkbook, sheet: HeldSheet, areas: readonly Area[]) =>
  collection("RangeCollection", () => areas.map((area) => range(workbook, sheet, area)));

export const sameName = (sheet: HeldSheet, name: unknown) =>
  String(sheet.bag.Name).toLowerCase() === String(name).toLowerCase();

export const formatAt = (sheet: HeldSheet, row: number, column: number) =>
  painted(sheet, { row, column, rows: 1, columns: 1 }, "NumberFormat") ?? "General";

function put(workbook: HeldWorkbook, sheet: HeldSheet, row: number, column: number, entry: unknown) {
  const entered = enteredCell(entry);
  if (entered === undefined) return;
  if (entered === null) sheet.cells.delete(cellKey(row, column));
  else {
    if (entered.formula) checkFormula(workbook, entered.formula);
    if (typeof entered.value === "string" && entered.value.length > LONGEST_TEXT) {
      throw invalidArgument(`text too long at ${cellName(row, column)}`);
    }
    sheet.cells.set(cellKey(row, column), entered);
  }
}

function eachCell(area: Area, given: unknown, put: (row: number, column: number, entry: unknown) => void) {
  const rows = Array.isArray(given) ? (given as unknown[][]) : null;
  if (rows && (rows.length !== area.rows || rows.some((row) => row.length !== area.columns))) {
    throw wrongSize();
  }
  for (let r = 0; r < area.rows; r++) {
    for (let c = 0; c < area.columns; c++) put(area.row + r, area.column + c, rows ? rows[r]![c] : given);
  }
}

function around(a: Area, b: Area): Area {
  const row = Math.min(a.row, b.row);
  const column = Math.min(a.column, b.column);
  return {
    row,
    column,
    rows: Math.max(a.row + a.rows, b.row + b.rows) - row,
    columns: Math.max(a.column + a.columns, b.column + b.columns) - column,
  };
}

/** As the service writes addresses: quoted only where the name needs it. */
function bareSheetName(sheet: HeldSheet): string {
  const name = String(sheet.bag.Name);
  return /^[A-Za-z_][A-Za-z0-9_]*$/.test(name) ? name : sheetName(name);
}

const wrongSize = () =>
  new ServiceError(
    "InvalidArgument",
    "The number of rows or columns in the input array doesn't match the size or dimensions of the range.",
  );
