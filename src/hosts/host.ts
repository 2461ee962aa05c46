import type { Outcome } from "../outcome/problem.ts";
import type { Taken } from "../sheets/free-names.ts";
import type { WorkbookPlan } from "../sheets/plan.ts";
import type { RowsSought, TableCells, TableChange } from "../sheets/table-change.ts";

/**
 * Who carries a sheet plan out: the spreadsheet (`excel/`), the page with the open grid (`workbench/`) or a file
 * (`file/`). The pane knows hosts only through this.
 */
export interface Host {
  /** How the host is called in messages: "the spreadsheet", "this page". */
  readonly name: string;
  /** Names that new sheets, tables and named areas must keep clear of. */
  taken(): Promise<Outcome<Taken>>;
  /** Adds the plan's sheets. Either all of them stand afterwards, or none and the workbook is as it was. */
  write(plan: WorkbookPlan, run?: Run): Promise<Outcome<Written>>;
  /** Selected cells as tab-separated text, ready for the reader. */
  selection(): Promise<Outcome<string>>;
  /** Names of the tables in the workbook, those on the sheet in front first. */
  tables(): Promise<Outcome<readonly string[]>>;
  /** A table with its headings as tab-separated text; without a name all that is used on the sheet in front. */
  tableText(name?: string): Promise<Outcome<string>>;
  /** A table as values, only some of its columns and rows where asked; null where there is no table of that name. */
  tableCells(
    name: string,
    only?: readonly string[],
    sought?: RowsSought,
  ): Promise<Outcome<TableCells | null>>;
  /**
   * Tells a table's text, or that of the sheet in front, once it listens and whenever something in it changes, until
   * what it answers is called; a problem is the last thing told. Not every host can.
   */
  readonly follow?: (name: string | undefined, told: Told) => Promise<Outcome<StopFollowing>>;
  /** Changes tables and adds the sheets of a plan, where there is one: all of it, or the workbook is as it was. */
  changeTables(
    changes: readonly TableChange[],
    create: WorkbookPlan | null,
    run?: Run,
  ): Promise<Outcome<Written>>;
  /** Hands a text over to the user as a file of that name. Not every host can. */
  readonly download?: (text: string, name: string) => void;
  /** Text kept with the workbook under a key, or null where there is none; a problem where that cannot be told. */
  recall(key: string): Promise<Outcome<string | null>>;
  /** Keeps a text with the workbook; null forgets it. */
  keep(key: string, text: string | null): Promise<Outcome<true>>;
}

/** Hears what has become of a table that is followed. */
export type Told = (text: Outcome<string>) => void;

export type StopFollowing = () => Promise<void>;

/** How long work tells how far it is, and is told to stop. */
export interface Run {
  /** From 0 to 1. */
  readonly progress?: (share: number) => void;
  readonly signal?: AbortSignal;
}

/** What came of a write that succeeded. */
export interface Written {
  /** Names of the sheets that were added and are in sight. */
  readonly sheets: readonly string[];
  /** What this host could not show as planned, a sentence each. */
  readonly notes: readonly string[];
}
