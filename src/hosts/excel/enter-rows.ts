import { bytesAround, bytesOfRow, type Entry, PIECE_BYTES } from "./entry.ts";
import { CALL, type Desk, type Step } from "./step.ts";

/** Cells of a table, counted from its first heading, also such as stand beside or below it. */
export function tableArea(
  desk: Desk,
  table: string,
  row: number,
  column: number,
  rows: number,
  columns: number,
): Excel.Range {
  return desk.workbook.tables
    .getItem(table)
    .getHeaderRowRange()
    .getCell(row, column)
    .getResizedRange(rows - 1, columns - 1);
}

/**
 * Enters rows of a table, all as wide as the first, from a row on that is counted from the headings. Formulas are
 * given as R1C1, so that one which comes to stand in another row reads the cells of that row.
 */
export function enterRows(table: string, row: number, entries: readonly Entry[][]): Step[] {
  const steps: Step[] = [];
  let from = 0;
  let bytes = 0;
  const finish = (to: number) => {
    const piece = entries.slice(from, to);
    if (piece.length === 0) return;
    const [start, columns] = [row + from, piece[0]!.length];
    steps.push({
      bytes: bytes + 4 * CALL + bytesAround(piece.length * columns),
      queue: (desk) => {
        tableArea(desk, table, start, 0, piece.length, columns).formulasR1C1 = piece;
      },
    });
    from = to;
    bytes = 0;
  };
  for (const [i, cells] of entries.entries()) {
    bytes += bytesOfRow(cells);
    if (bytes > PIECE_BYTES) finish(i + 1);
  }
  finish(entries.length);
  return steps;
}
