import Papa from "papaparse";
import { invalid, type Outcome } from "../outcome/problem.ts";
import { headingKey } from "../sheets/heading-key.ts";
import { bringForward } from "./bring-forward.ts";
import type { Cell, Row, Table } from "./cell.ts";
import { LEDGER, type Schema } from "./schema.ts";
import { columnsByHeading, typed } from "./table-rows.ts";

/**
 * Rows as comma-separated text under the headings of the schema: full figures with decimal points, days as
 * `yyyy-mm-dd`, TRUE and FALSE, nothing where there is nothing. `readLedgerText` gives the same rows back.
 */
export function ledgerText(rows: readonly Row[], schema: Schema = LEDGER): string {
  const fields = schema.columns.map(({ heading }) => heading);
  const data = rows.map((row) => schema.columns.map(({ key }) => written(row[key] ?? null)));
  return `${Papa.unparse({ fields, data }, { newline: "\n" })}\n`;
}

function written(cell: Cell): string {
  if (cell === null) return "";
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
}

/** Rows from delimited text, of today's form or an older one; columns that the schema does not know are left out. */
export function readLedgerText(text: string, schema: Schema = LEDGER): Outcome<Row[]> {
  const parsed = Papa.parse<string[]>(text.replace(/^\ufeff/, ""), { skipEmptyLines: "greedy" });
  const [headings = [], ...lines] = parsed.data;
  const known = columnsByHeading(schema);
  const raw: Table = { headings, rows: lines.map((line) => headings.map((_, c) => line[c] || null)) };
  const table = schema === LEDGER ? bringForward(figured(raw)).table : raw;
  const columns = table.headings.map((heading) => known.get(headingKey(heading)));
  if (!columns.some((column) => column?.key === schema.key)) {
    const heading = schema.columns.find(({ key }) => key === schema.key)!.heading;
    return invalid(
      `The text has no column "${heading}", so it is no ${schema.table}; bring it in as a tracking sheet.`,
    );
  }
  return table.rows.map((cells) => {
    const row: Record<string, Cell> = Object.fromEntries(schema.columns.map(({ key }) => [key, null]));
    for (const [c, column] of columns.entries())
      if (column) row[column.key] = typed(cells[c] ?? null, column);
    return row;
  });
}

/** Chances of an older form are reckoned with, so they have to be figures first. */
function figured(table: Table): Table {
  const chance = table.headings.findIndex((heading) => headingKey(heading) === "chance (%)");
  if (chance < 0) return table;
  const rows = table.rows.map((row) =>
    row.map((cell, c) =>
      c === chance && typeof cell === "string" && Number.isFinite(Number(cell)) ? Number(cell) : cell,
    ),
  );
  return { ...table, rows };
}
