import { headingKey } from "../sheets/heading-key.ts";
import type { TableChange } from "../sheets/table-change.ts";
import type { Cell, Table } from "./cell.ts";
import { columnFormat } from "./column-format.ts";
import { LEDGER, type Schema } from "./schema.ts";
import { columnsByHeading } from "./table-rows.ts";

/** What turns a table into another one whose first rows and columns are those of the first, in their order. */
export function changeBetween(before: Table, after: Table, schema: Schema = LEDGER): TableChange {
  const known = columnsByHeading(schema);
  const old = before.headings.length;
  return {
    table: schema.table,
    expected: { headings: before.headings, rows: before.rows.length },
    rename: before.headings.flatMap((heading, column) =>
      after.headings[column] === heading ? [] : [{ column, heading: after.headings[column]! }],
    ),
    columns: after.headings.slice(old).map((heading) => {
      const column = known.get(headingKey(heading));
      return { heading, format: column ? columnFormat(column) : "General" };
    }),
    update: before.rows.flatMap((cells, row) => {
      const now = after.rows[row]!.map((cell, c): Cell | undefined =>
        c < old && Object.is(cell, cells[c]) ? undefined : cell,
      );
      return now.some((cell, c) => cell !== undefined && !(c >= old && cell === null))
        ? [{ row, cells: now }]
        : [];
    }),
    remove: [],
    append: after.rows.slice(before.rows.length),
  };
}
