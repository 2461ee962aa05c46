import type { Cell as FileCell, CellStyle as FileStyle, CellValue as FileValue } from "hucre";
import { areaName } from "../../sheets/a1.ts";
import type { Block, CellValue, SheetPlan } from "../../sheets/plan.ts";
import { type Spill, spillsOf } from "../../sheets/spills.ts";
import { fileFormula } from "./file-formula.ts";
import { fileText, isAwkward } from "./file-text.ts";
import { isPlainRow, type LongRun, LongRuns } from "./long-runs.ts";
import { type Band, paintedBands } from "./painted-bands.ts";

/** Cells as the library takes them: plain rows, a look for each column, and what differs from these. */
export interface FileCells {
  readonly rows: FileValue[][];
  readonly columnStyles: readonly (FileStyle | undefined)[];
  readonly cells: Map<string, Partial<FileCell>>;
  /** Left out of the above, for `finishParts` to write. */
  readonly runs: readonly LongRun[];
}

/**
 * Marks text that must stay text even after someone edits its cell. The library knows no such mark, so this stands
 * in for it until `finishParts` puts the right one.
 */
const KEPT_AS_TEXT = { hidden: true } as const;

/** Values, formulas, looks and notes of a sheet. */
export function fileCells(sheet: SheetPlan): FileCells {
  const bands = paintedBands(sheet);
  const columnStyles = commonStyles(bands);
  const rows: FileValue[][] = [];
  const cells = new Map<string, Partial<FileCell>>();
  const runs = new LongRuns(sheet, bands);

  for (const block of sheet.blocks) for (const i of block.cells.keys()) putRow(block, i);
  for (const spill of spillsOf(sheet)) putSpill(spill);
  for (const { row, rows: height, styles } of bands) {
    for (let r = row; r < row + height; r++) if (!rows[r]) rows[r] = runs.has(r) ? [] : paintedRow(r, styles);
  }
  // The library forgets the heights of rows below the last cell.
  for (const { row, rows: height } of sheet.heights) rows[row + height - 1] ??= [];
  for (const { row, column, text } of sheet.notes) change(row, column, { comment: { text: fileText(text) } });
  return { rows: Array.from(rows, (line) => line ?? []), columnStyles, cells, runs: runs.all };

  function putRow(block: Block, i: number): void {
    const row = block.row + i;
    if (runs.take(block, i)) return;
    const line = lineAt(row, block.column);
    for (const [j, value] of block.cells[i]!.entries()) put(value, row, block.column + j, line);
    if (isPlainRow(block.cells[i]!)) runs.offer(block, row);
  }

  /** The row so far, up to a column at least. */
  function lineAt(row: number, column: number): FileValue[] {
    const line = rows[row] ?? paintedRow(row, runs.bandOf(row)?.styles ?? []);
    rows[row] = line;
    while (line.length < column) widen(row, line);
    return line;
  }

  /** The cells that a formula fills hold its answers; it says itself which cells these are, and that it may grow. */
  function putSpill({ area, answers }: Spill): void {
    for (const [i, texts] of answers.entries()) {
      const row = area.row + i;
      const line = lineAt(row, area.column);
      for (const [j, answer] of texts.entries()) {
        if (i > 0 || j > 0) put(answer, row, area.column + j, line);
      }
    }
    change(area.row, area.column, {
      formulaType: "array",
      formulaRef: areaName(area),
      formulaDynamic: true,
    });
  }

  /** A row of empty cells as they were painted. */
  function paintedRow(row: number, styles: Band["styles"]): FileValue[] {
    styles.forEach((style, column) => {
      if (style !== columnStyles[column]) cells.set(`${row},${column}`, { style: style ?? {} });
    });
    return new Array<FileValue>(styles.length).fill(null);
  }

  function put(value: CellValue, row: number, column: number, line: FileValue[]): void {
    if (column === line.length) widen(row, line);
    if (typeof value === "string") {
      line[column] = fileText(value);
      if (isAwkward(value)) keepAsText(value, row, column);
    } else if (typeof value === "object" && value !== null) {
      const answer = typeof value.value === "string" ? fileText(value.value) : value.value;
      change(row, column, { formula: fileFormula(fileText(value.formula)), formulaResult: answer });
    } else {
      line[column] = value;
    }
  }

  function keepAsText(value: string, row: number, column: number): void {
    const style = cells.get(`${row},${column}`)?.style ?? columnStyles[column];
    change(row, column, { style: { ...style, protection: KEPT_AS_TEXT } });
    // As plain text the library would make an error of it.
    if (value.startsWith("#")) change(row, column, { richText: [{ text: fileText(value) }] });
  }

  /** One more cell in a row; it was never painted, whatever look the rest of its column has. */
  function widen(row: number, line: FileValue[]): void {
    if (columnStyles[line.length]) change(row, line.length, { style: {} });
    line.push(null);
  }

  function change(row: number, column: number, cell: Partial<FileCell>): void {
    const key = `${row},${column}`;
    cells.set(key, { ...cells.get(key), ...cell });
  }
}

/** For each column the look that most of its rows have: those cells then need no word of their own. */
function commonStyles(bands: readonly Band[]): (FileStyle | undefined)[] {
  const columns = Math.max(0, ...bands.map(({ styles }) => styles.length));
  return Array.from({ length: columns }, (_, column) => {
    const counts = new Map<FileStyle | undefined, number>();
    for (const { rows, styles } of bands) {
      counts.set(styles[column], (counts.get(styles[column]) ?? 0) + rows);
    }
    return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
  });
}
