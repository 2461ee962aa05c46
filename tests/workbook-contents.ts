import type { Marker } from "../src/sheets/plan.ts";
import type { CellStyle } from "../src/sheets/styles.ts";

/**
 * What a workbook holds, told in one way whoever made it: the plan itself, the spreadsheet, the page or a file.
 * Tests of the hosts compare two of these. Places are A1 names without `$`, colours are `#rrggbb`, and what a
 * sheet does not have is left out or empty, so that `toEqual` shows a difference and nothing else.
 */
export interface WorkbookContents {
  readonly sheets: readonly SheetContents[];
  /** Named area to `'Sheet'!$A$1:$B$2`. */
  readonly names: Readonly<Record<string, string>>;
  readonly active: string;
}

export interface SheetContents {
  readonly name: string;
  readonly hidden: boolean;
  /** By A1 name; only cells with a value, a formula, a format, a look or a note. */
  readonly cells: Readonly<Record<string, CellContents>>;
  /** Column letters to characters. */
  readonly widths: Readonly<Record<string, number>>;
  /** Row number as the spreadsheet counts it, to points. */
  readonly heights: Readonly<Record<string, number>>;
  /** Sorted. */
  readonly merges: readonly string[];
  readonly gridlines: boolean;
  readonly frozen: { readonly rows: number; readonly columns: number } | null;
  readonly tables: readonly TableContents[];
  readonly validations: readonly ValidationContents[];
  readonly conditions: readonly ConditionContents[];
  readonly charts: readonly ChartContents[];
  readonly print: PrintContents | null;
}

export interface CellContents {
  /** The value, or the answer of the formula. Left out for an empty cell. */
  readonly value?: string | number | boolean;
  /** Without "=" and without the prefixes that files put before newer functions. */
  readonly formula?: string;
  /** The cells that the formula fills, where these are more than its own. */
  readonly spills?: string;
  /** Left out for `General`. */
  readonly format?: string;
  /** Left out where the cell looks plain or was never painted. */
  readonly look?: CellStyle;
  readonly note?: string;
}

export interface TableContents {
  readonly name: string;
  readonly area: string;
  readonly headings: readonly string[];
  readonly filterButtons: boolean;
  readonly bands: boolean;
}

/** Sorted by area. `tick` is TRUE or FALSE, as a box or as a list of the two. */
export type ValidationContents =
  | { readonly area: string; readonly kind: "tick" }
  | {
      readonly area: string;
      readonly kind: "list";
      readonly choices: readonly string[];
      readonly message: string;
    }
  | {
      readonly area: string;
      readonly kind: "number";
      readonly least: number;
      readonly most: number;
      readonly message: string;
    };

export interface ConditionContents {
  readonly area: string;
  readonly formula: string;
  readonly color: string;
  readonly fill: string | null;
  readonly bold: boolean;
  readonly strike: boolean;
}

export interface ChartContents {
  readonly name: string;
  readonly title: string;
  readonly alt: string;
  readonly area: string;
  readonly kind: "scatter" | "bar";
  readonly x: AxisContents;
  readonly y: AxisContents;
  readonly legend: boolean;
  readonly look: ChartLook;
  readonly series: readonly SeriesContents[];
}

/** Colours `#rrggbb`, sizes in points; of the two axes together, for they look alike. */
export interface ChartLook {
  readonly background: string;
  readonly border: string;
  readonly titleSize: number;
  readonly titleColor: string;
  /** Of each axis that has a title. */
  readonly axisTitleSizes: readonly number[];
  readonly labelColors: readonly string[];
  readonly gridline: string;
  readonly gridlineWeight: number;
}

export interface AxisContents {
  readonly title: string;
  readonly least: number | null;
  readonly most: number | null;
  readonly format: string;
  readonly labels: boolean;
}

export interface SeriesContents {
  readonly name: string;
  /** `'Sheet'!$A$1:$A$9` */
  readonly x: string;
  readonly y: string;
  readonly color: string;
  readonly marker: Marker;
  /** 0 where there is no marker, and for a bar. */
  readonly markerSize: number;
  readonly line: "none" | "solid" | "dash";
  /** In the legend. */
  readonly listed: boolean;
}

export interface PrintContents {
  readonly landscape: boolean;
  readonly area: string | null;
  readonly pagesWide: number;
  readonly pagesTall: number;
  /** `1:2` */
  readonly titleRows: string | null;
  readonly footer: string | null;
}
