import { headingKey } from "../../sheets/heading-key.ts";
import type { RowsSought, TableCells } from "../../sheets/table-change.ts";
import type { Workbook } from "./grid.ts";
import { areaOf } from "./grid-range.ts";
import { type ReadCell, readCell, readCells } from "./read-cells.ts";

/** A table's values, of all its columns and rows or only of those asked for; null where there is no such table. */
export function tableCells(
  workbook: Workbook,
  name: string,
  only?: readonly string[],
  sought?: RowsSought,
): TableCells | null {
  const found = tableOf(workbook, name);
  if (!found) return null;
  const { sheet, area } = found;
  const headings = readCells(sheet, { ...area, rows: 1 })[0]!.map((cell) => String(cell ?? ""));
  const body = { ...area, row: area.row + 1, rows: area.rows - 1 };
  if (body.rows < 1) return { headings, rows: [] };
  if (!only && !sought) return { headings, rows: readCells(sheet, body) };
  // Straight from the grid's own cells: an archive has hundreds of thousands of rows, and spills nothing.
  const matrix = sheet.getSheet().getCellMatrix();
  const cell = (r: number, place: number) => readCell(matrix.getValue(body.row + r, body.column + place));
  const wanted = only && new Set(only.map(headingKey));
  const places = headings.flatMap((heading, place) =>
    !wanted || wanted.has(headingKey(heading)) ? [place] : [],
  );
  const blank = new Array<ReadCell>(headings.length).fill(null);
  const whole = (r: number) => {
    const row = blank.slice();
    for (const place of places) row[place] = cell(r, place);
    return row;
  };
  if (!sought) return { headings, rows: Array.from({ length: body.rows }, (_, r) => whole(r)) };
  const rows = new Array<ReadCell[]>(body.rows).fill([]);
  const left = new Set(sought.texts);
  const by = headings.findIndex((heading) => headingKey(heading) === headingKey(sought.heading));
  for (let r = 0; by >= 0 && r < body.rows && left.size > 0; r++) {
    if (left.delete(String(cell(r, by) ?? ""))) rows[r] = whole(r);
  }
  return { headings, rows };
}

/** A table of the workbook, where it stands and on which sheet. */
export function tableOf(workbook: Workbook, name: string) {
  const table = workbook.getTableList().find((one) => one.name.toLowerCase() === name.toLowerCase());
  const sheet = table && workbook.getSheetBySheetId(table.subUnitId);
  return table && sheet ? { id: table.id, sheet, area: areaOf(table.range) } : null;
}
