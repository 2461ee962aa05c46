import { headingKey } from "../sheets/heading-key.ts";
import type { TableChange } from "../sheets/table-change.ts";
import { changedTable } from "../sheets/table-change.ts";
import type { Cell, Row, Table } from "./cell.ts";
import { columnFormat } from "./column-format.ts";
import type { Schema } from "./schema.ts";
import { cellsOf, columnsByHeading, typed } from "./table-rows.ts";

/** What appending came to. */
export interface Merged {
  /** The table afterwards. */
  readonly table: Table;
  readonly change: TableChange;
  /** Rows that are new, stood there already, and stood there with other facts. */
  readonly added: number;
  readonly already: number;
  readonly updated: number;
  /** Rows of the session that it no longer has. */
  readonly removed: number;
}

/**
 * Appends rows to a table, each once: a row whose key stands there already is left alone where it says the same, and
 * put right where it does not. Columns that are not of the schema are the user's own and keep their cells; columns that
 * a row needs and the table lacks are added at the right. A blank row, which a table keeps when all others have gone, is
 * filled before any is appended.
 *
 * `whole` names a session whose rows are all given: those of its rows that stand there and are not given go. Where the
 * table itself holds a key twice, the first row counts and the others are left alone.
 */
export function mergeRows(
  table: Table,
  rows: readonly Row[],
  schema: Schema,
  whole: string | null = null,
): Merged {
  const standing = new Set(table.headings.map(headingKey));
  const needed = schema.columns.filter(
    ({ key, heading }) =>
      !standing.has(headingKey(heading)) && rows.some((row) => (row[key] ?? null) !== null),
  );
  const headings = [...table.headings, ...needed.map(({ heading }) => heading)];
  const columns = columnsByHeading(schema);
  const watched = headings.map((heading) => columns.get(headingKey(heading)));
  const update: { row: number; cells: (Cell | undefined)[] }[] = [];
  const latest = new Map<string, Row>();
  for (const row of rows) latest.set(String(row[schema.key]), row);
  const { places, surplus } = placesOf(latest, table, schema, whole);
  const blank = blankRows(table, schema);
  const append: Cell[][] = [];
  const filled: typeof update = [];
  for (const [key, row] of latest) {
    const place = places.get(key);
    if (place === undefined && blank.length === 0) {
      append.push(cellsOf<Cell>(row, headings, schema, null));
      continue;
    }
    const cells = cellsOf<undefined>(row, headings, schema, undefined);
    if (place === undefined) {
      filled.push({ row: blank.shift()!, cells });
      continue;
    }
    const now = table.rows[place]!;
    const differs = watched.some(
      (column, c) =>
        column && cells[c] !== undefined && !alike(typed(now[c] ?? null, column), typed(cells[c], column)),
    );
    if (differs) update.push({ row: place, cells });
  }
  const change: TableChange = {
    table: schema.table,
    expected: { headings: table.headings, rows: table.rows.length },
    rename: [],
    columns:
      append.length + update.length + filled.length === 0
        ? []
        : needed.map((column) => ({ heading: column.heading, format: columnFormat(column) })),
    update: [...filled, ...update],
    remove: surplus,
    append,
  };
  const already = latest.size - append.length - filled.length - update.length;
  return {
    // Not made before it is asked for: who keeps rows below a long table wants the change alone.
    get table() {
      return changedTable(table, change);
    },
    change,
    added: append.length + filled.length,
    already,
    updated: update.length,
    removed: surplus.length,
  };
}

/** Spreadsheets keep 15 digits of what is entered, so a figure that differs beyond them is still the same one. */
function alike(one: Cell, other: Cell): boolean {
  if (typeof one !== "number" || typeof other !== "number") return one === other;
  return Math.abs(one - other) <= 1e-14 * Math.abs(other);
}

/**
 * Where the wanted keys stand, and where rows of the session do that are not wanted any more. Only those are looked for:
 * a map of all keys of a long archive takes longer to make.
 */
function placesOf(
  wanted: ReadonlyMap<string, Row>,
  table: Table,
  schema: Schema,
  whole: string | null,
): { readonly places: Map<string, number>; readonly surplus: number[] } {
  const column = keyColumn(table, schema);
  const places = new Map<string, number>();
  const surplus: number[] = [];
  for (const [place, row] of column < 0 ? [] : table.rows.entries()) {
    const cell = row[column];
    if (cell === null || cell === undefined) continue;
    const key = String(cell);
    if (!wanted.has(key)) {
      if (whole !== null && key.startsWith(`${whole}-`) && /^\d+$/.test(key.slice(whole.length + 1)))
        surplus.push(place);
    } else if (!places.has(key)) places.set(key, place);
  }
  return { places, surplus };
}

/** Rows with nothing in any column of ours, the first one first. Rows that were not read are no cells at all. */
function blankRows(table: Table, schema: Schema): number[] {
  const ours = columnsByHeading(schema);
  const columns = table.headings.flatMap((heading, c) => (ours.has(headingKey(heading)) ? [c] : []));
  return table.rows.flatMap((row, place) =>
    row.length > 0 && columns.every((c) => (row[c] ?? "") === "") ? [place] : [],
  );
}

function keyColumn(table: Table, schema: Schema): number {
  const heading = schema.columns.find(({ key }) => key === schema.key)!.heading;
  return table.headings.findIndex((one) => headingKey(one) === headingKey(heading));
}
