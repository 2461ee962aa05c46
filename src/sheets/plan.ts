/**
 * A sheet plan says what worksheets show, as pure data: no host, no library, no callback in it. It is written once
 * and carried out by every host, so that a workbook made in the spreadsheet, in the page and in a file is the same
 * workbook. Rows and columns count from 0 here; only `a1.ts` turns them into the A1 names that formulas use.
 */
export interface WorkbookPlan {
  readonly sheets: readonly SheetPlan[];
  readonly names: readonly NamedArea[];
  /** Name of the sheet to show first. */
  readonly active: string;
}

/** What stands in a cell. `null` leaves it empty. A string is always text, even one that begins with "=". */
export type CellValue = string | number | boolean | null | FormulaCell;

/**
 * A native formula, in English, comma-separated, without the leading "=". It names only functions that a
 * spreadsheet of 2007 knows. `value` is the answer when the plan was made, for readers that do not calculate.
 */
export interface FormulaCell {
  readonly formula: string;
  readonly value: string | number | boolean;
  /**
   * All answers of a formula that fills more cells than its own, row by row; `value` is the first of them. The plan
   * leaves the cells that it fills empty, for what stands there would be in its way.
   */
  readonly spills?: readonly (readonly (string | number | boolean)[])[];
}

/** A rectangle of cells; row and column are counted from 0. */
export interface Area {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** One worksheet. */
export interface SheetPlan {
  /** Free in the workbook when the plan was made; formulas in the plan already use it. */
  readonly name: string;
  /** Values and formulas, as rectangles that do not overlap. */
  readonly blocks: readonly Block[];
  /** Looks, painted in order: a later one replaces an earlier one where they overlap. */
  readonly styles: readonly StyledArea[];
  readonly formats: readonly FormattedArea[];
  readonly widths: readonly ColumnWidth[];
  readonly heights: readonly RowHeight[];
  readonly merges: readonly Area[];
  /** Rows above and columns to the left that stay in view. */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  readonly tables: readonly TablePlan[];
  /** Cells of TRUE and FALSE shown as tick boxes, or as a list of the two where a host has none. */
  readonly ticks: readonly Area[];
  readonly validations: readonly ValidationPlan[];
  readonly conditions: readonly ConditionPlan[];
  readonly charts: readonly ChartPlan[];
  readonly notes: readonly NotePlan[];
  readonly print?: PrintPlan;
  /** Out of sight until asked for; holds what charts and formulas draw on. */
  readonly hidden: boolean;
}

/** Cells to be written, from a row and column on. */
export interface Block {
  readonly row: number;
  readonly column: number;
  /** Row by row; every row of one block has the same length. */
  readonly cells: readonly (readonly CellValue[])[];
}

/** Cells that share a look. */
export interface StyledArea {
  readonly area: Area;
  /** A name in STYLES (styles.ts). */
  readonly style: StyleName;
}

/** Cells whose figures are shown alike. */
export interface FormattedArea {
  readonly area: Area;
  /** A number format code of the spreadsheet standard: `0.0`, `#,##0`, `yyyy-mm-dd`. */
  readonly format: string;
}

/** Columns of one width. */
export interface ColumnWidth {
  readonly column: number;
  readonly columns: number;
  /** In characters of the default font, as spreadsheets count width. */
  readonly characters: number;
}

/** Rows of one height. */
export interface RowHeight {
  readonly row: number;
  readonly rows: number;
  readonly points: number;
}

/** A native table: headings in its first row, filter buttons, bands. */
export interface TablePlan {
  /** Free in the workbook; letters, digits and underscores. */
  readonly name: string;
  readonly area: Area;
}

/** What may be typed into cells, and the message for anything else. */
export type ValidationPlan =
  | {
      readonly area: Area;
      readonly kind: "list";
      readonly choices: readonly string[];
      readonly message: string;
    }
  | {
      readonly area: Area;
      readonly kind: "number";
      readonly least: number;
      readonly most: number;
      readonly message: string;
    };

/** A look that a cell takes while a formula over it is TRUE. Relative to the first cell of the area. */
export interface ConditionPlan {
  readonly area: Area;
  readonly formula: string;
  readonly style: ConditionStyleName;
}

/** Words that come up beside a cell. */
export interface NotePlan {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** How the sheet goes onto paper. */
export interface PrintPlan {
  readonly landscape: boolean;
  readonly area?: Area;
  /** Pages across and down that it must fit; 0 lets it run. */
  readonly pagesWide: number;
  readonly pagesTall: number;
  /** Rows repeated on each page. */
  readonly titleRows?: { readonly row: number; readonly rows: number };
  /** Plain text in the middle of the foot of each page. */
  readonly footer?: string;
}

/** Cells that formulas may call by a name. */
export interface NamedArea {
  readonly name: string;
  readonly at: SheetArea;
}

/** Cells of a sheet that need not be the one at hand. */
export interface SheetArea {
  readonly sheet: string;
  readonly area: Area;
}

/** A chart that draws on cells, so that it follows them. */
export interface ChartPlan {
  /** Free among the charts of its sheet. */
  readonly name: string;
  readonly title: string;
  /** What the picture shows, for those who do not see it. */
  readonly alt: string;
  /** Cells that it covers. */
  readonly area: Area;
  /** `scatter`: points or lines at x and y. `bar`: a bar for each y, named by the text in x. */
  readonly kind: "scatter" | "bar";
  readonly x: AxisPlan;
  readonly y: AxisPlan;
  readonly series: readonly SeriesPlan[];
  readonly legend: boolean;
}

/** One axis of a chart. */
export interface AxisPlan {
  readonly title: string;
  /** Left out: the host chooses. */
  readonly least?: number;
  readonly most?: number;
  readonly format: string;
  /** Leaves out the figures along the axis, where they would mean nothing. */
  readonly hideLabels?: boolean;
}

/** Shapes that tell series apart without colour. */
export type Marker = "circle" | "square" | "diamond" | "triangle" | "x" | "plus" | "none";

/** What one build or line of a chart draws. */
export interface SeriesPlan {
  readonly name: string;
  readonly x: SheetArea;
  readonly y: SheetArea;
  /** `#rrggbb` */
  readonly color: string;
  readonly marker: Marker;
  readonly markerSize: number;
  readonly line: "none" | "solid" | "dash";
  /** Left out of the legend: limits and outlines that belong to another series. */
  readonly unlisted: boolean;
}

/** Looks by what a cell is for. Their fonts, fills and borders stand in styles.ts. */
export type StyleName =
  | "plain"
  | "title"
  | "subtitle"
  | "label"
  | "heading"
  | "headingCentre"
  | "headingLeft"
  | "group"
  | "figure"
  | "figureStrong"
  | "faint"
  | "sentence"
  | "sentenceStrong"
  | "warning"
  | "input"
  | "small";

/** A name in CONDITION_STYLES (styles.ts). */
export type ConditionStyleName = "dimmed" | "good" | "bad" | "alert";
