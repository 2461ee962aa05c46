import { LocaleType, LogLevel, mergeLocales, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import conditionsEnglish from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { type IFunctionInfo, UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreEnglish from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationEnglish from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsDrawingPreset } from "@univerjs/preset-sheets-drawing";
import drawingEnglish from "@univerjs/preset-sheets-drawing/locales/en-US";
import { UniverSheetsNotePreset } from "@univerjs/preset-sheets-note";
import noteEnglish from "@univerjs/preset-sheets-note/locales/en-US";
import { UniverSheetsTablePreset, UniverSheetsTableUIPlugin } from "@univerjs/preset-sheets-table";
import tableEnglish from "@univerjs/preset-sheets-table/locales/en-US";
import { greenTheme } from "@univerjs/themes";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-drawing/lib/index.css";
import "@univerjs/preset-sheets-note/lib/index.css";
import "@univerjs/preset-sheets-table/lib/index.css";
import type { CellFunction } from "./cell-function.ts";

/** The grid, its workbook and a sheet, as the rest of this folder speaks to them. */
export type Grid = FUniver;
/** See `Grid`. */
export type Workbook = NonNullable<ReturnType<Grid["getActiveWorkbook"]>>;
/** See `Grid`. */
export type Sheet = NonNullable<ReturnType<Workbook["getSheetByName"]>>;

/** What the grid is started with. */
export interface GridSetup {
  readonly functions: readonly CellFunction[];
  readonly help: readonly IFunctionInfo[];
  readonly dark: boolean;
}

/**
 * Puts an open spreadsheet grid into the element, with one empty sheet. The packages' own umbrella does the same
 * in as many lines, but brings two dozen packages with it.
 */
export function createGrid(container: HTMLElement, { functions, help, dark }: GridSetup): [Grid, Workbook] {
  const univer = new Univer({
    theme: greenTheme,
    darkMode: dark,
    locale: LocaleType.EN_US,
    locales: {
      [LocaleType.EN_US]: mergeLocales(
        coreEnglish,
        conditionsEnglish,
        validationEnglish,
        drawingEnglish,
        noteEnglish,
        tableEnglish,
      ),
    },
    logLevel: LogLevel.WARN,
  });
  const presets = [
    UniverSheetsCorePreset({
      container,
      ribbonType: "simple",
      formula: { function: [...functions], description: [...help] },
      // Text that looks like a number is text on purpose here; no mark, no pop-up.
      sheets: { disableForceStringAlert: true, disableForceStringMark: true },
    }),
    UniverSheetsConditionalFormattingPreset(),
    UniverSheetsDataValidationPreset(),
    UniverSheetsDrawingPreset(),
    UniverSheetsNotePreset(),
  ];
  // A table's name in a flap above it would cover its heading where panes are frozen.
  const tables = UniverSheetsTablePreset().plugins.map((plugin) =>
    plugin === UniverSheetsTableUIPlugin ? ([plugin, { hideAnchor: true }] as never) : plugin,
  );
  for (const plugin of [...presets.flatMap((preset) => preset.plugins), ...tables]) {
    if (Array.isArray(plugin)) univer.registerPlugin(...plugin);
    else univer.registerPlugin(plugin);
  }
  const grid = FUniver.newAPI(univer);
  return [grid, grid.createWorkbook({ id: "workbook", name: "Workbook" })];
}
