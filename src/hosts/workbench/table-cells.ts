import type { TableCells } from "../../sheets/table-change.ts";
import type { Workbook } from "./grid.ts";
import { areaOf } from "./grid-range.ts";
import { type ReadCell, readCell, readCells } from "./read-cells.ts";

/** A table's values, of all its columns or only of those named; null where there is no such table. */
export function tableCells(workbook: Workbook, name: string, only?: readonly string[]): TableCells | null {
  const found = tableOf(workbook, name);
  if (!found) return null;
  const { sheet, area } = found;
  const headings = readCells(sheet, { ...area, rows: 1 })[0]!.map((cell) => String(cell ?? ""));
  const body = { ...area, row: area.row + 1, rows: area.rows - 1 };
  if (body.rows < 1) return { headings, rows: [] };
  if (!only) return { headings, rows: readCells(sheet, body) };
  const wanted = new Set(only.map((heading) => heading.toLowerCase()));
  const places = headings.flatMap((heading, place) => (wanted.has(heading.toLowerCase()) ? [place] : []));
  const blank = new Array<ReadCell>(headings.length).fill(null);
  // Straight from the grid's own cells: an archive has hundreds of thousands of rows, and spills nothing.
  const matrix = sheet.getSheet().getCellMatrix();
  const rows = Array.from({ length: body.rows }, (_, r) => {
    const row = blank.slice();
    for (const place of places) row[place] = readCell(matrix.getValue(body.row + r, body.column + place));
    return row;
  });
  return { headings, rows };
}

/** A table of the workbook, where it stands and on which sheet. */
export function tableOf(workbook: Workbook, name: string) {
  const table = workbook.getTableList().find((one) => one.name.toLowerCase() === name.toLowerCase());
  const sheet = table && workbook.getSheetBySheetId(table.subUnitId);
  return table && sheet ? { id: table.id, sheet, area: areaOf(table.range) } : null;
}
