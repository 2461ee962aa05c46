import Papa from "papaparse";
import { invalid, type Outcome } from "../outcome/problem.ts";
import { headingKey } from "../sheets/heading-key.ts";
import { bringForward } from "./bring-forward.ts";
import type { Cell, Row, Table } from "./cell.ts";
import { type Column, LEDGER, type Schema } from "./schema.ts";
import { columnsByHeading, foreignColumns, typed } from "./table-rows.ts";
import { readDay } from "./tracking-dates.ts";

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

/**
 * Rows from delimited text, of today's form or an older one; columns that the schema does not know are left out
 * (`foreignHeadings` names them). A spreadsheet that writes decimal commas parts its cells otherwise than by commas, and
 * writes yes, no and days in its own way: that is read as well.
 */
export function readLedgerText(text: string, schema: Schema = LEDGER): Outcome<Row[]> {
  const { table: raw, local } = parsed(text);
  const table = schema === LEDGER ? bringForward(figured(raw, local)).table : raw;
  const known = columnsByHeading(schema);
  const columns = table.headings.map((heading) => known.get(headingKey(heading)));
  if (!columns.some((column) => column?.key === schema.key)) {
    const heading = schema.columns.find(({ key }) => key === schema.key)!.heading;
    return invalid(
      `The text has no column "${heading}", so it is no ${schema.table}; bring it in as a tracking sheet.`,
    );
  }
  return table.rows.map((cells) => {
    const row: Record<string, Cell> = Object.fromEntries(schema.columns.map(({ key }) => [key, null]));
    for (const [c, column] of columns.entries()) {
      const cell = cells[c] ?? null;
      if (column) row[column.key] = typed(local ? plainly(cell, column) : cell, column);
    }
    return row;
  });
}

/** Headings of a text that the schema does not know, so that what stands below them is not taken along. */
export function foreignHeadings(text: string, schema: Schema = LEDGER): string[] {
  const { headings } = parsed(text, 1).table;
  const now = schema === LEDGER ? bringForward({ headings, rows: [] }).table.headings : headings;
  return foreignColumns(now, schema);
}

/** The text as a table, and whether its spreadsheet may write decimal commas. */
function parsed(text: string, lines = 0): { readonly table: Table; readonly local: boolean } {
  const { data, meta } = Papa.parse<string[]>(text.replace(/^\ufeff/, ""), {
    skipEmptyLines: "greedy",
    preview: lines,
  });
  const [headings = [], ...body] = data;
  const rows = body.map((line) => headings.map((_, c) => line[c] || null));
  return { table: { headings, rows }, local: meta.delimiter !== "," };
}

const YES = /^(?:wahr|vrai|verdadero|vero)$/i;
const NO = /^(?:falsch|faux|falso)$/i;

/** A cell as `ledgerText` would have written it: points for decimal commas, days with the year first. */
function plainly(cell: Cell, { type }: Column): Cell {
  if (typeof cell !== "string" || type === "text") return cell;
  if (type === "truth") return YES.test(cell) ? "TRUE" : NO.test(cell) ? "FALSE" : cell;
  if (type === "day") return readDay(cell, null) ?? cell;
  return /^[+-]?\d+,\d+(?:e[+-]?\d+)?$/i.test(cell) ? cell.replace(",", ".") : cell;
}

/** Chances of an older form are reckoned with, so they have to be figures first. */
function figured(table: Table, local: boolean): Table {
  const chance = table.headings.findIndex((heading) => headingKey(heading) === "chance (%)");
  if (chance < 0) return table;
  const rows = table.rows.map((row) =>
    row.map((cell, c) => {
      if (c !== chance || typeof cell !== "string") return cell;
      const figure = Number(local ? cell.replace(",", ".") : cell);
      return Number.isFinite(figure) ? figure : cell;
    }),
  );
  return { ...table, rows };
}
