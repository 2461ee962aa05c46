/** What stands in a cell of a table as values; `null` where it is empty. */
export type TableCell = string | number | boolean | null;

/** A table as a host reads it. Cells of columns that were not asked for are null. */
export interface TableCells {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly TableCell[])[];
}

/**
 * Rows that are looked for by what stands under one heading: the first one with each of the texts. All others come back
 * as empty lists, so that a long table keeps its count without being read.
 */
export interface RowsSought {
  readonly heading: string;
  readonly texts: readonly string[];
}

/**
 * What is to become of a native table, as pure data: columns at its right, cells of some rows, rows that go, rows at
 * its end. Rows count from 0 below the headings, before anything changes. Carried out whole or not at all.
 */
export interface TableChange {
  readonly table: string;
  /** What the change was worked out from; where the table has become another since, nothing is done. */
  readonly expected: { readonly headings: readonly string[]; readonly rows: number };
  /** Headings that are to read otherwise; columns count from 0. */
  readonly rename: readonly { readonly column: number; readonly heading: string }[];
  /** New columns, at the right of those that stand; a number format for each. */
  readonly columns: readonly { readonly heading: string; readonly format: string }[];
  /** As long as the headings with the new ones; `undefined` leaves a cell alone, `null` empties it. */
  readonly update: readonly { readonly row: number; readonly cells: readonly (TableCell | undefined)[] }[];
  /** Rows that go, rising. */
  readonly remove: readonly number[];
  /** As long as the headings with the new ones. */
  readonly append: readonly (readonly TableCell[])[];
}

/** A change that changes nothing. */
export function isIdle({ rename, columns, update, remove, append }: TableChange): boolean {
  return rename.length + columns.length + update.length + remove.length + append.length === 0;
}

/** Whether a table is still what a change was worked out from. */
export function isAsExpected({ expected }: TableChange, headings: readonly unknown[], rows: number): boolean {
  const same = expected.headings.every((heading, i) => String(headings[i] ?? "") === heading);
  return same && headings.length === expected.headings.length && rows === expected.rows;
}

/** The table after a change. */
export function changedTable(table: TableCells, change: TableChange): TableCells {
  const called = new Map(change.rename.map(({ column, heading }) => [column, heading]));
  const standing = table.headings.map((heading, column) => called.get(column) ?? heading);
  const headings = [...standing, ...change.columns.map(({ heading }) => heading)];
  const gone = new Set(change.remove);
  const given = new Map(change.update.map(({ row, cells }) => [row, cells]));
  const rows = table.rows.flatMap((cells, row) => {
    if (gone.has(row)) return [];
    const update = given.get(row);
    if (!update && change.columns.length === 0) return [cells];
    return [headings.map((_, c) => (update?.[c] === undefined ? (cells[c] ?? null) : update[c]!))];
  });
  return { headings, rows: [...rows, ...change.append] };
}
