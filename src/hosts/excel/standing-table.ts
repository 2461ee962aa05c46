import { invalid, type Outcome, unavailable } from "../../outcome/problem.ts";
import type { TableChange } from "../../sheets/table-change.ts";
import { CELLS_AT_ONCE } from "./cells-at-once.ts";
import type { Entry } from "./entry.ts";
import { runsOf } from "./runs-of.ts";

/** A table before it is changed, with all that a change will write over. */
export interface StandingTable {
  readonly name: string;
  readonly headings: readonly string[];
  readonly rows: number;
  /** Number formats of the last row, for those that follow. */
  readonly formats: readonly string[];
  /** Entries of rows that will be written over, by row; formulas as R1C1, for the rows may move. */
  readonly entries: ReadonlyMap<number, Entry[]>;
  /** Rows and columns that the change adds. */
  readonly grows: { readonly rows: number; readonly columns: number };
  readonly renamed: boolean;
}

/** Each cell comes with its value and its formula. */
const MOST_CELLS = CELLS_AT_ONCE / 2;

/** Looks at a table and at the room round it. */
export async function readStandingTable(
  context: Excel.RequestContext,
  change: TableChange,
): Promise<Outcome<StandingTable>> {
  const table = context.workbook.tables.getItemOrNullObject(change.table);
  const whole = table.getRange();
  const header = table.getHeaderRowRange();
  whole.load("rowCount,columnCount");
  header.load("values");
  await context.sync();
  if (table.isNullObject) return unavailable(`There is no table "${change.table}" any more.`);
  const { rowCount, columnCount } = whole;
  const last = whole.getRow(rowCount - 1);
  last.load("numberFormat");
  const rows = change.append.length;
  const columns = change.columns.length;
  const around = [
    ...(rows > 0 ? [whole.getCell(rowCount, 0).getResizedRange(rows - 1, columnCount + columns - 1)] : []),
    ...(columns > 0 ? [whole.getCell(0, columnCount).getResizedRange(rowCount - 1, columns - 1)] : []),
  ].map((range) => range.getUsedRangeOrNullObject(true));
  for (const range of around) range.load("address");
  await context.sync();
  const inTheWay = around.find((range) => !range.isNullObject);
  if (inTheWay) {
    return invalid(
      `Something stands where the table "${change.table}" has to grow, at ${inTheWay.address}; move it and try again.`,
    );
  }
  return {
    name: change.table,
    headings: header.values[0]!.map(String),
    rows: rowCount - 1,
    formats: last.numberFormat[0]!.map(String),
    entries: await readEntries(context, whole, touched(change, rowCount - 1), columnCount),
    grows: { rows, columns },
    renamed: change.rename.length > 0,
  };
}

/** Rows that a change writes over: those it updates, and from the first that goes all below. */
function touched({ update, remove }: TableChange, rows: number): [number, number][] {
  if (remove.length > 0) {
    const first = Math.min(remove[0]!, ...update.map(({ row }) => row));
    return [[first, rows - first]];
  }
  return runsOf(update.map(({ row }) => row).sort((a, b) => a - b));
}

async function readEntries(
  context: Excel.RequestContext,
  whole: Excel.Range,
  runs: readonly [number, number][],
  columns: number,
): Promise<Map<number, Entry[]>> {
  const entries = new Map<number, Entry[]>();
  const most = Math.max(1, Math.floor(MOST_CELLS / columns));
  let waiting: { from: number; range: Excel.Range }[] = [];
  let cells = 0;
  const fetch = async () => {
    await context.sync();
    for (const { from, range } of waiting) {
      for (const [r, formulas] of range.formulasR1C1.entries()) {
        entries.set(
          from + r,
          formulas.map((formula, c) => entryAgain(formula, range.values[r]![c])),
        );
      }
    }
    waiting = [];
    cells = 0;
  };
  for (const [start, length] of runs) {
    for (let row = start; row < start + length; row += most) {
      const count = Math.min(most, start + length - row);
      const range = whole.getCell(row + 1, 0).getResizedRange(count - 1, columns - 1);
      range.load("formulasR1C1,values");
      waiting.push({ from: row, range });
      cells += count * columns;
      if (cells >= MOST_CELLS) await fetch();
    }
  }
  if (waiting.length > 0) await fetch();
  return entries;
}

/** What to enter so that a cell holds again what it held: texts behind an apostrophe, formulas as they are. */
function entryAgain(formula: unknown, value: unknown): Entry {
  if (typeof formula === "string" && formula.startsWith("=") && formula !== value) return formula;
  if (typeof value === "string") return value === "" ? "" : `'${value}`;
  return value as Entry;
}
