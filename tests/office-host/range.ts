import { areaName, sheetName } from "../../src/sheets/a1.ts";
import type { Area } from "../../src/sheets/plan.ts";
import { COLUMNS, checked, covers, overlap, parseCells, ROWS, splitAddress } from "./addresses.ts";
import { collection } from "./collection.ts";
import { conditions } from "./conditions.ts";
import { eachCell, enterCells, noteChange, wrongSize } from "./enter-cells.ts";
import { painted, paintStore } from "./painted.ts";
import { RANGE_FORMAT, VALIDATION } from "./range-shapes.ts";
import { around, surroundingRegion, usedArea } from "./regions.ts";
import { formulaAt, relativeFormula } from "./relative-formula.ts";
import { invalidArgument, itemNotFound } from "./service-error.ts";
import { shaped } from "./shapes.ts";
import { spilledValue, spillsOn } from "./spills.ts";
import { watching } from "./watching.ts";
import { readOnly, type WireObject } from "./wire-object.ts";
import { cellKey, type HeldSheet, type HeldWorkbook } from "./workbook.ts";

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
  const spills = () => spillsOn(workbook, sheet);
  const spillAt = () => {
    if (area.rows > 1 || area.columns > 1) throw invalidArgument("spills of more than one cell");
    return spills().filter((spill) => !spill.blocked && overlap(spill.area, area))[0];
  };
  const spillingTo = () => {
    const spill = spillAt();
    const own = spill && spill.area.row === area.row && spill.area.column === area.column;
    return own ? range(workbook, sheet, spill.area) : null;
  };
  const spillParent = () => {
    const spill = spillAt();
    return spill ? range(workbook, sheet, { ...spill.area, rows: 1, columns: 1 }) : null;
  };
  const enter = (given: unknown) => enterCells(workbook, sheet, area, given);
  const values = readOnly(() => {
    const all = spills();
    return grid((row, column) => spilledValue(all, row, column) ?? cell(row, column)?.value ?? "");
  });
  const formulas = readOnly(() => {
    const all = spills();
    return grid(
      (row, column) =>
        cell(row, column)?.formula ?? spilledValue(all, row, column) ?? cell(row, column)?.value ?? "",
    );
  });
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
      FormulasR1C1: {
        get: () =>
          (formulas.get() as unknown[][]).map((cells, r) =>
            cells.map((entry, c) => {
              const { formula } = cell(area.row + r, area.column + c) ?? {};
              return formula ? relativeFormula(formula, area.row + r, area.column + c) : entry;
            }),
          ),
        set: (given) => enterCells(workbook, sheet, area, given, formulaAt),
      },
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
      // Of ExcelApi 1.12; null where some cells spill and others do not.
      HasSpill: readOnly(() => {
        const all = spills().filter(({ blocked }) => !blocked);
        const found = new Set(grid((row, column) => spilledValue(all, row, column) !== undefined).flat());
        return found.size === 1 ? found.has(true) : null;
      }),
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
      Worksheet: () => homeOf(workbook, sheet),
    },
    methods: {
      GetCell: (row: number, column: number) =>
        part({ row: area.row + row, column: area.column + column, rows: 1, columns: 1 }),
      GetResizedRange: (rows: number, columns: number) =>
        part({ rows: area.rows + rows, columns: area.columns + columns }),
      GetUsedRangeOrNullObject: () => usedRange(workbook, sheet, area),
      GetRow: (row: number) => part({ row: area.row + row, rows: 1 }),
      // The library puts the pieces of a large array together with it.
      GetBoundingRect: (other: RangeObject) => range(workbook, sheet, around(area, other.area)),
      // The library asks this before it cuts a large array into writes of 1,500 cells.
      _ValidateArraySize: (rows: number, columns: number) => {
        if (rows !== area.rows || columns !== area.columns) throw wrongSize();
      },
      Clear: (what?: string) => {
        eachCell(area, null, (row, column) => sheet.cells.delete(cellKey(row, column)));
        noteChange(workbook, sheet, area);
        if (what === "Contents") return;
        const kept = sheet.paints.filter((paint) => !covers(area, paint.area));
        sheet.paints.splice(0, sheet.paints.length, ...kept);
      },
      GetSpillingToRange: () => spillingTo() ?? fail(itemNotFound()),
      GetSpillingToRangeOrNullObject: spillingTo,
      GetSpillParent: () => spillParent() ?? fail(itemNotFound()),
      GetSpillParentOrNullObject: spillParent,
      GetSurroundingRegion: () => range(workbook, sheet, surroundingRegion(workbook, sheet, area)),
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

function fail(error: Error): never {
  throw error;
}

/** Of the sheet of a range only what is asked of it; the whole one is in worksheet.ts, which builds on ranges. */
export function homeOf(workbook: HeldWorkbook, sheet: HeldSheet): WireObject {
  const whole: Area = { row: 0, column: 0, rows: ROWS, columns: COLUMNS };
  return {
    type: "Worksheet",
    id: sheet.id,
    scalars: { Id: readOnly(() => sheet.id) },
    methods: {
      GetRange: () => range(workbook, sheet, whole),
      ...watching(workbook, sheet),
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

/** The used part of an area, or null. */
export function usedRange(workbook: HeldWorkbook, sheet: HeldSheet, within: Area): RangeObject | null {
  const used = usedArea(workbook, sheet, within);
  return used ? range(workbook, sheet, used) : null;
}

/** `Excel.RangeCollection` of the areas of a selection. */
export const ranges = (workbook: HeldWorkbook, sheet: HeldSheet, areas: readonly Area[]) =>
  collection("RangeCollection", () => areas.map((area) => range(workbook, sheet, area)));

export const sameName = (sheet: HeldSheet, name: unknown) =>
  String(sheet.bag.Name).toLowerCase() === String(name).toLowerCase();

export const formatAt = (sheet: HeldSheet, row: number, column: number) =>
  painted(sheet, { row, column, rows: 1, columns: 1 }, "NumberFormat") ?? "General";

/** As the service writes addresses: quoted only where the name needs it. */
function bareSheetName(sheet: HeldSheet): string {
  const name = String(sheet.bag.Name);
  return /^[A-Za-z_][A-Za-z0-9_]*$/.test(name) ? name : sheetName(name);
}
