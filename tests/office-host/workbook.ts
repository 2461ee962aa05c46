import type { Area } from "../../src/sheets/plan.ts";
import type { EnteredCell } from "./entered-cell.ts";

/** Properties by their wire names, as the library sent them. */
export type Bag = { [name: string]: unknown };

/** One property given to all cells of an area; the last one given counts. */
export interface Paint {
  readonly area: Area;
  readonly property: string;
  readonly value: unknown;
}

export interface HeldTable {
  readonly id: string;
  area: Area;
  readonly bag: Bag;
}

export interface HeldSeries {
  readonly bag: Bag;
}

export interface HeldChart {
  readonly id: string;
  readonly bag: Bag;
  readonly series: HeldSeries[];
  readonly entries: Bag[];
}

export interface HeldCondition {
  readonly id: string;
  readonly area: Area;
  readonly bag: Bag;
}

export interface HeldSheet {
  readonly id: string;
  readonly bag: Bag;
  readonly cells: Map<number, EnteredCell>;
  readonly paints: Paint[];
  readonly tables: HeldTable[];
  readonly charts: HeldChart[];
  readonly conditions: HeldCondition[];
  readonly merges: Area[];
  /** Old-style notes and threaded comments by cell name, such as `B3`. */
  readonly notes: Map<string, string>;
  readonly comments: Map<string, string>;
  readonly print: Bag;
  frozen?: { rows: number; columns: number };
}

/** A workbook in memory: what the service would keep. */
export interface HeldWorkbook {
  readonly sheets: HeldSheet[];
  readonly names: Map<string, { formula: string }>;
  readonly settings: Map<string, unknown>;
  active: string;
  /** Selected areas on the active sheet, or null while something else, such as a chart, is selected. */
  selection: readonly Area[] | null;
  /** Hands out identifiers. */
  last: number;
  /** Identifiers of the sheets whose changes someone wants to hear of. */
  readonly watched: Set<string>;
  /** Changes that nobody was told of yet. */
  readonly changes: HeldChange[];
}

/** An area of a sheet in which something was entered or cleared. */
export interface HeldChange {
  readonly sheet: string;
  readonly area: Area;
}

/** A new workbook with one empty sheet, as a spreadsheet opens it. */
export function newWorkbook(): HeldWorkbook {
  const workbook: HeldWorkbook = {
    sheets: [],
    names: new Map(),
    settings: new Map(),
    active: "",
    selection: [{ row: 0, column: 0, rows: 1, columns: 1 }],
    last: 0,
    watched: new Set(),
    changes: [],
  };
  workbook.active = addSheet(workbook, "Sheet1").id;
  return workbook;
}

export function addSheet(workbook: HeldWorkbook, name: string): HeldSheet {
  const sheet: HeldSheet = {
    id: `{${++workbook.last}}`,
    bag: { Name: name, Visibility: "Visible" },
    cells: new Map(),
    paints: [],
    tables: [],
    charts: [],
    conditions: [],
    merges: [],
    notes: new Map(),
    comments: new Map(),
    print: {},
  };
  workbook.sheets.push(sheet);
  return sheet;
}

/** Where a cell stands in `cells`. */
export const cellKey = (row: number, column: number) => row * 16_384 + column;
