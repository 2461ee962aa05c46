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
}

/**
 * Appends rows to a table, each once: a row whose key stands there already is left alone where it says the same, and
 * put right where it does not. Columns that are not of the schema are the user's own and keep their cells; columns that
 * a row needs and the table lacks are added at the right. `compared` limits what is compared, where only some columns
 * of a long table were read: a row that differs there is written whole.
 *
 * Where the table itself holds a key twice, the first row counts and the others are left alone.
 */
export function mergeRows(
  table: Table,
  rows: readonly Row[],
  schema: Schema,
  compared: readonly string[] = schema.columns.map(({ key }) => key),
): Merged {
  const standing = new Set(table.headings.map(headingKey));
  const needed = schema.columns.filter(
    ({ key, heading }) =>
      !standing.has(headingKey(heading)) && rows.some((row) => (row[key] ?? null) !== null),
  );
  const headings = [...table.headings, ...needed.map(({ heading }) => heading)];
  const columns = columnsByHeading(schema);
  const watched = headings.map((heading) => {
    const column = columns.get(headingKey(heading));
    return column && compared.includes(column.key) ? column : undefined;
  });
  const update: { row: number; cells: (Cell | undefined)[] }[] = [];
  const latest = new Map<string, Row>();
  for (const row of rows) latest.set(String(row[schema.key]), row);
  const places = placesOf(latest, table, schema);
  const append: Cell[][] = [];
  for (const [key, row] of latest) {
    const place = places.get(key);
    if (place === undefined) {
      append.push(cellsOf<Cell>(row, headings, schema, null));
      continue;
    }
    const cells = cellsOf<undefined>(row, headings, schema, undefined);
    const now = table.rows[place]!;
    const differs = watched.some(
      (column, c) => column && !Object.is(typed(now[c] ?? null, column), typed(cells[c] ?? null, column)),
    );
    if (differs) update.push({ row: place, cells });
  }
  const change: TableChange = {
    table: schema.table,
    expected: { headings: table.headings, rows: table.rows.length },
    rename: [],
    columns:
      append.length + update.length === 0
        ? []
        : needed.map((column) => ({ heading: column.heading, format: columnFormat(column) })),
    update,
    remove: [],
    append,
  };
  const already = latest.size - append.length - update.length;
  return {
    // Not made before it is asked for: who keeps rows below a long table wants the change alone.
    get table() {
      return changedTable(table, change);
    },
    change,
    added: append.length,
    already,
    updated: update.length,
  };
}

/** Where the wanted keys stand. Only they are looked for: a map of all keys of a long archive takes longer to make. */
function placesOf(wanted: ReadonlyMap<string, Row>, table: Table, schema: Schema): Map<string, number> {
  const heading = schema.columns.find(({ key }) => key === schema.key)!.heading;
  const column = table.headings.findIndex((one) => headingKey(one) === headingKey(heading));
  const places = new Map<string, number>();
  if (column < 0) return places;
  for (const [place, row] of table.rows.entries()) {
    const cell = row[column];
    if (cell === null || cell === undefined) continue;
    const key = String(cell);
    if (wanted.has(key) && !places.has(key)) places.set(key, place);
  }
  return places;
}
