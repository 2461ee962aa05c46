/** What a cell of a ledger table holds; `null` where it is empty. */
export type Cell = string | number | boolean | null;

/** A table as a workbook or a file holds it: headings, and a list of cells for each row, as long as the headings. */
export interface Table {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/**
 * A row by its columns' keys. A key that is absent says nothing of its column: what stands there already stays. `null`
 * says that there is nothing, and empties it.
 */
export type Row = Readonly<Record<string, Cell>>;

/** The figure in a cell; null where there is none. */
export function figureIn(row: Row, key: string): number | null {
  const cell = row[key];
  return typeof cell === "number" && Number.isFinite(cell) ? cell : null;
}

/** The text in a cell, without blanks around it; empty where there is none. */
export function textIn(row: Row, key: string): string {
  const cell = row[key];
  return cell === null || cell === undefined ? "" : String(cell).trim();
}
