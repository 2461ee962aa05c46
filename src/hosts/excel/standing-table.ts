import { invalid, type Outcome, unavailable } from "../../outcome/problem.ts";
import type { TableChange } from "../../sheets/table-change.ts";

/** A table before it is changed, with all that a change will write over. */
export interface StandingTable {
  readonly name: string;
  readonly headings: readonly string[];
  readonly rows: number;
  /** Number formats of the last row, for those that follow. */
  readonly formats: readonly string[];
  /** Entries of rows that will be written over, by row. */
  readonly entries: ReadonlyMap<number, Entry[]>;
  /** Rows and columns that the change adds. */
  readonly grows: { readonly rows: number; readonly columns: number };
  readonly renamed: boolean;
}

/** What a cell is given; null leaves it as it is. */
export type Entry = string | number | boolean | null;

/** The service hands out 5 MB at once. */
const CELLS_AT_ONCE = 50_000;

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
  const runs: [number, number][] = [];
  for (const row of update.map((one) => one.row).sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && last[0] + last[1] === row) last[1]++;
    else runs.push([row, 1]);
  }
  return runs;
}

async function readEntries(
  context: Excel.RequestContext,
  whole: Excel.Range,
  runs: readonly [number, number][],
  columns: number,
): Promise<Map<number, Entry[]>> {
  const entries = new Map<number, Entry[]>();
  const most = Math.max(1, Math.floor(CELLS_AT_ONCE / columns));
  let waiting: { from: number; range: Excel.Range }[] = [];
  let cells = 0;
  const fetch = async () => {
    await context.sync();
    for (const { from, range } of waiting) {
      for (const [r, formulas] of range.formulas.entries()) {
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
      range.load("formulas,values");
      waiting.push({ from: row, range });
      cells += count * columns;
      if (cells >= CELLS_AT_ONCE) await fetch();
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

/** Queues what puts a table back as it stood. */
export function restoreTable(context: Excel.RequestContext, table: StandingTable): void {
  const { name, headings, rows, entries, grows, renamed } = table;
  const held = context.workbook.tables.getItem(name);
  const corner = held.getHeaderRowRange().getCell(0, 0);
  const at = (row: number, column: number, height: number, width: number) =>
    corner.getCell(row, column).getResizedRange(height - 1, width - 1);
  held.resize(at(0, 0, rows + 1, headings.length));
  if (grows.rows > 0) at(rows + 1, 0, grows.rows, headings.length + grows.columns).clear();
  if (grows.columns > 0) at(0, headings.length, rows + 1, grows.columns).clear();
  if (renamed) at(0, 0, 1, headings.length).formulas = [headings.map((heading) => `'${heading}`)];
  for (const [row, cells] of entries) at(row + 1, 0, 1, headings.length).formulas = [cells];
}
