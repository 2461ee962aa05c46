import type { Area } from "../../src/sheets/plan.ts";
import { COLUMNS, overlap, parseCells, ROWS, splitAddress } from "./addresses.ts";
import { cellKey, type HeldSheet, type HeldWorkbook } from "./workbook.ts";

type Grid = readonly (readonly unknown[])[];

/** A formula that answers several cells: where it would put them, and whether something stands there. */
export interface HeldSpill {
  readonly area: Area;
  readonly answers: Grid;
  readonly blocked: boolean;
}

/** A reference, with or without its sheet. */
const REFERENCE = /^(?:'(?:[^']|'')+'!|\w+!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/i;

/** The array formulas that are worked out here: a name, and what becomes of the cells between the brackets. */
const ARRAYS: Readonly<Record<string, (cells: Grid) => Grid>> = {
  "": (cells) => cells,
  TRANSPOSE: (cells) => (cells[0] ?? []).map((_, c) => cells.map((row) => row[c])),
};

/** The spills of a sheet, those in the way of each other included: the one entered first has the cells. */
export function spillsOn(workbook: HeldWorkbook, sheet: HeldSheet): HeldSpill[] {
  const found: HeldSpill[] = [];
  for (const [key, { formula }] of sheet.cells) {
    const answers = formula && answersOf(workbook, sheet, formula.slice(1));
    if (!answers || (answers.length === 1 && answers[0]!.length === 1)) continue;
    const place = { row: Math.floor(key / COLUMNS), column: key % COLUMNS };
    const area: Area = { ...place, rows: answers.length, columns: answers[0]!.length };
    const blocked = isBlocked(sheet, area, key) || found.some((other) => holds(other, area));
    found.push({ area, answers, blocked });
  }
  return found;
}

/** What a cell shows because of spills: an answer, or #SPILL! where there is no room; undefined where none reaches. */
export function spilledValue(spills: readonly HeldSpill[], row: number, column: number): unknown {
  for (const { area, answers, blocked } of spills) {
    if (!overlap(area, { row, column, rows: 1, columns: 1 })) continue;
    if (!blocked) return answers[row - area.row]![column - area.column];
    if (row === area.row && column === area.column) return "#SPILL!";
  }
  return undefined;
}

const holds = ({ area, blocked }: HeldSpill, other: Area) => !blocked && overlap(area, other) !== undefined;

function isBlocked(sheet: HeldSheet, area: Area, own: number): boolean {
  if (area.row + area.rows > ROWS || area.column + area.columns > COLUMNS) return true;
  // A table takes no formula that fills more than its cell.
  const closed = [...sheet.merges, ...sheet.tables.map((table) => table.area)];
  if (closed.some((other) => overlap(other, area))) return true;
  for (let r = 0; r < area.rows; r++) {
    for (let c = 0; c < area.columns; c++) {
      const key = cellKey(area.row + r, area.column + c);
      if (key !== own && sheet.cells.has(key)) return true;
    }
  }
  return false;
}

function answersOf(workbook: HeldWorkbook, sheet: HeldSheet, formula: string): Grid | undefined {
  const [, name = "", bracketed] = /^([A-Z]+)\((.*)\)$/i.exec(formula) ?? [];
  const turn = ARRAYS[name.toUpperCase()];
  const reference = bracketed ?? formula;
  if (!turn || !REFERENCE.test(reference)) return undefined;
  const { sheet: named, cells } = splitAddress(reference);
  const home = named === undefined ? sheet : workbook.sheets.find(({ bag }) => bag.Name === named);
  if (!home) return undefined;
  const { row, column, rows, columns } = parseCells(cells);
  return turn(
    Array.from({ length: rows }, (_, r) =>
      Array.from(
        { length: columns },
        // An empty cell that is referred to counts as 0.
        (_, c) => home.cells.get(cellKey(row + r, column + c))?.value ?? 0,
      ),
    ),
  );
}
