import { headingKey } from "../sheets/heading-key.ts";
import type { Cell, Row, Table } from "./cell.ts";
import { dayNumber, dayOfNumber } from "./day.ts";
import type { Column, Schema } from "./schema.ts";

/**
 * A row as cells under these headings: days as day numbers. Headings that are not of the schema, and those that the row
 * says nothing of, get `other`.
 */
export function cellsOf<T>(row: Row, headings: readonly string[], schema: Schema, other: T): (Cell | T)[] {
  const known = columnsByHeading(schema);
  return headings.map((heading) => {
    const column = known.get(headingKey(heading));
    if (!column) return other;
    const cell = row[column.key];
    if (cell === undefined) return other;
    return column.type === "day" && typeof cell === "string" ? (dayNumber(cell) ?? cell) : cell;
  });
}

/** Rows of a table by the keys of the schema. What stands under other headings is the user's own and left out. */
export function rowsOf(table: Table, schema: Schema): Row[] {
  const known = columnsByHeading(schema);
  const columns = table.headings.map((heading) => known.get(headingKey(heading)));
  return table.rows.map((cells) => {
    const row: Record<string, Cell> = {};
    for (const [place, column] of columns.entries()) {
      if (column) row[column.key] = typed(cells[place] ?? null, column);
    }
    return row;
  });
}

/** A cell as its column keeps it, whatever the spreadsheet made of it; what does not fit stays as it is. */
export function typed(cell: Cell, { type }: Column): Cell {
  if (cell === null || cell === "") return null;
  if (type === "text") return String(cell);
  if (type === "day") return typeof cell === "number" ? (dayOfNumber(cell) ?? cell) : cell;
  if (type === "truth") {
    if (typeof cell === "boolean") return cell;
    const said = String(cell).toLowerCase();
    return said === "true" || said === "1" ? true : said === "false" || said === "0" ? false : cell;
  }
  if (typeof cell !== "string") return cell;
  const figure = Number(cell);
  return cell.trim() !== "" && Number.isFinite(figure) ? figure : cell;
}

/** Columns of a schema by how their headings are compared. */
export function columnsByHeading(schema: Schema): Map<string, Column> {
  return new Map(schema.columns.map((column) => [headingKey(column.heading), column]));
}

/** Headings that are not of the schema: columns of the user's own. */
export function foreignColumns(headings: readonly string[], schema: Schema): string[] {
  const known = columnsByHeading(schema);
  return headings.filter((heading) => heading.trim() !== "" && !known.has(headingKey(heading)));
}
