import { cellName } from "../../src/sheets/a1.ts";
import type { Area } from "../../src/sheets/plan.ts";
import { COLUMNS, checked, ROWS } from "./addresses.ts";
import { charts } from "./charts.ts";
import { collection } from "./collection.ts";
import { type RangeObject, range, rangeAt, sameName, usedRange } from "./range.ts";
import { PAGE_LAYOUT } from "./range-shapes.ts";
import { invalidArgument, itemAlreadyExists, ServiceError } from "./service-error.ts";
import { bagStore, shaped } from "./shapes.ts";
import { tables } from "./tables.ts";
import { watching } from "./watching.ts";
import { readOnly, type WireObject } from "./wire-object.ts";
import { addSheet, type HeldSheet, type HeldWorkbook } from "./workbook.ts";

/** `Excel.WorksheetCollection` */
export function worksheets(workbook: HeldWorkbook): WireObject {
  const find = (key: unknown) => workbook.sheets.find((sheet) => sheet.id === key || sameName(sheet, key));
  const wired = (sheet: HeldSheet | undefined) => sheet && worksheet(workbook, sheet);
  return collection(
    "WorksheetCollection",
    () => workbook.sheets.map((sheet) => worksheet(workbook, sheet)),
    (key) => wired(find(key)),
    {
      Add: (name?: string) => {
        const wish = name ?? `Sheet${workbook.sheets.length + 1}`;
        checkName(workbook, wish);
        return worksheet(workbook, addSheet(workbook, wish));
      },
      GetActiveWorksheet: () => wired(find(workbook.active)),
    },
  );
}

/** `Excel.Worksheet` */
export function worksheet(workbook: HeldWorkbook, sheet: HeldSheet): WireObject {
  const { bag } = sheet;
  const visible = () => workbook.sheets.filter((one) => one.bag.Visibility === "Visible");
  return {
    type: "Worksheet",
    id: sheet.id,
    scalars: {
      Id: readOnly(() => sheet.id),
      Position: readOnly(() => workbook.sheets.indexOf(sheet)),
      Name: {
        get: () => bag.Name,
        set: (name) => {
          if (!sameName(sheet, name)) checkName(workbook, String(name));
          bag.Name = name;
        },
      },
      Visibility: {
        get: () => bag.Visibility,
        set: (value) => {
          if (value !== "Visible" && visible().every((one) => one === sheet))
            throw invalidArgument("last sheet");
          bag.Visibility = value;
        },
      },
      // Read by one name and, so the client library, set by another.
      ShowGridlines: readOnly(() => bag.Gridlines ?? true),
      Gridlines: {
        get: () => bag.Gridlines ?? true,
        set: (value) => {
          bag.Gridlines = value;
        },
      },
    },
    children: {
      Tables: () => tables(workbook, sheet),
      Charts: () => charts(workbook, sheet),
      FreezePanes: () => freezePanes(sheet),
      PageLayout: () => pageLayout(workbook, sheet),
      Notes: () => notes(workbook, sheet),
    },
    methods: {
      Activate: () => {
        if (bag.Visibility !== "Visible") throw invalidArgument("a hidden sheet cannot be activated");
        workbook.active = sheet.id;
      },
      Delete: () => {
        if (visible().every((one) => one === sheet)) {
          throw new ServiceError("InvalidOperation", "The last visible worksheet cannot be deleted.");
        }
        workbook.sheets.splice(workbook.sheets.indexOf(sheet), 1);
        if (workbook.active === sheet.id) workbook.active = visible()[0]!.id;
      },
      ...watching(workbook, sheet),
      GetRange: (address?: string) =>
        address === undefined || address === null
          ? range(workbook, sheet, WHOLE)
          : rangeAt(workbook, sheet, address),
      GetRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
        range(workbook, sheet, checked({ row, column, rows, columns })),
      GetCell: (row: number, column: number) =>
        range(workbook, sheet, checked({ row, column, rows: 1, columns: 1 })),
      GetUsedRange: () => usedRange(workbook, sheet, WHOLE) ?? range(workbook, sheet, CORNER),
      GetUsedRangeOrNullObject: () => usedRange(workbook, sheet, WHOLE),
    },
  };
}

const WHOLE: Area = { row: 0, column: 0, rows: ROWS, columns: COLUMNS };
const CORNER: Area = { row: 0, column: 0, rows: 1, columns: 1 };

function checkName(workbook: HeldWorkbook, name: string): void {
  const bad = /[\\/?*[\]:]/.test(name) || name.length > 31 || name === "" || /^'|'$/.test(name);
  if (bad || name.toLowerCase() === "history") throw invalidArgument(`sheet name ${name}`);
  if (workbook.sheets.some((sheet) => sameName(sheet, name))) throw itemAlreadyExists();
}

function freezePanes(sheet: HeldSheet): WireObject {
  return {
    type: "WorksheetFreezePanes",
    methods: {
      FreezeAt: ({ area }: RangeObject) => {
        sheet.frozen = { rows: area.row + area.rows, columns: area.column + area.columns };
      },
      FreezeRows: (rows: number) => {
        sheet.frozen = { rows, columns: 0 };
      },
      FreezeColumns: (columns: number) => {
        sheet.frozen = { rows: 0, columns };
      },
    },
  };
}

function pageLayout(workbook: HeldWorkbook, sheet: HeldSheet): WireObject {
  const asRange = (given: unknown) =>
    typeof given === "string" ? rangeAt(workbook, sheet, given) : (given as RangeObject);
  const layout = shaped("PageLayout", PAGE_LAYOUT, bagStore(sheet.print));
  return {
    ...layout,
    methods: {
      SetPrintArea: (given: unknown) => {
        sheet.print.Area = asRange(given).area;
      },
      SetPrintTitleRows: (given: unknown) => {
        sheet.print.TitleRows = asRange(given).area;
      },
    },
  };
}

/** `Excel.NoteCollection`, of ExcelApi 1.18 */
function notes(workbook: HeldWorkbook, sheet: HeldSheet): WireObject {
  return collection("NoteCollection", () => [], undefined, {
    Add: (cell: unknown, content: string) => {
      const { area } = typeof cell === "string" ? rangeAt(workbook, sheet, cell) : (cell as RangeObject);
      const name = cellName(area.row, area.column);
      if (sheet.notes.has(name)) throw itemAlreadyExists();
      sheet.notes.set(name, content);
      return { type: "Note", scalars: { Content: readOnly(() => content) } };
    },
  });
}
