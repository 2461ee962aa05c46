import type { Block, CellValue, SheetPlan } from "../../sheets/plan.ts";
import { spillsOf } from "../../sheets/spills.ts";
import { bytesAround, bytesOfRow, type Entry, PIECE_BYTES } from "./entry.ts";
import type { Step } from "./step.ts";
import { supports } from "./supports.ts";

/** The spreadsheet takes no longer formula, its sign included. Source: "Excel specifications and limits". */
const LONGEST_FORMULA = 8_192;

/** Values, and formulas that need nothing but cells and names. What is written otherwise is said in `notes`. */
export function writeBlocks(sheet: SheetPlan, notes: Set<string>): Step[] {
  const blocks = blocksOf(sheet);
  if (blocks.length > sheet.blocks.length && !supports(SPILLING))
    notes.add(
      "This spreadsheet fills no cells beside a formula; each of those cells has a formula of its own.",
    );
  if (blocks.some(({ cells }) => cells.some((row) => row.some(hasTooLong))))
    notes.add(
      "A formula was too long for the spreadsheet; in its place is its answer, which does not follow.",
    );
  return blocksOf(sheet).flatMap((block) =>
    pieces(sheet.name, block, (value) => (namesTable(value) ? null : entryOf(value))),
  );
}

/** Formulas that name tables, which must stand before the spreadsheet takes these. */
export function writeTableFormulas(sheet: SheetPlan): Step[] {
  return blocksOf(sheet)
    .filter(({ cells }) => cells.some((row) => row.some(namesTable)))
    .flatMap((block) => pieces(sheet.name, block, (value) => (namesTable(value) ? entryOf(value) : null)));
}

/** A spreadsheet of this set lets a formula fill the cells beside its own. */
const SPILLING = "1.12";

/**
 * The blocks of a sheet. In a spreadsheet whose formulas stay in their own cells, each cell that one should fill asks
 * for its own part of the answer; the inner INDEX has such a spreadsheet work the formula out as an array. A formula
 * that is too long leaves its answers, and fills nothing either.
 */
function blocksOf(sheet: SheetPlan): readonly Block[] {
  const spills = spillsOf(sheet).filter((spill) => !supports(SPILLING) || isTooLong(spill.formula));
  const parts = spills.map(({ formula, area: { row, column }, answers }) => ({
    row,
    column,
    cells: answers.map((line, i) =>
      line.map((value, j) => ({ formula: `INDEX(INDEX(${formula},0,0),${i + 1},${j + 1})`, value })),
    ),
  }));
  return [...sheet.blocks, ...parts];
}

/**
 * A cell as the spreadsheet takes it for an entry. Every text goes in behind an apostrophe, which the spreadsheet
 * takes off again: so "=x", "007", "TRUE" and "Jan 5" stay the texts they are. `null` leaves a cell alone.
 */
function entryOf(value: CellValue): Entry {
  if (typeof value === "string") return `'${value}`;
  if (typeof value !== "object" || value === null) return value;
  return isTooLong(value.formula) ? entryOf(value.value) : `=${value.formula}`;
}

const isTooLong = (formula: string) => formula.length + 1 > LONGEST_FORMULA;

const hasTooLong = (value: CellValue) =>
  typeof value === "object" && value !== null && isTooLong(value.formula);

function namesTable(value: CellValue): boolean {
  return typeof value === "object" && value !== null && /\w\[/.test(value.formula);
}

function pieces(sheet: string, block: Block, turn: (value: CellValue) => Entry): Step[] {
  const steps: Step[] = [];
  const columns = block.cells[0]?.length ?? 0;
  let rows: Entry[][] = [];
  let bytes = 0;
  const finish = (next: number) => {
    const written = rows;
    if (written.length === 0 || columns === 0) return;
    const area = { row: next - written.length, column: block.column, rows: written.length, columns };
    steps.push({
      bytes: bytes + bytesAround(written.length * columns),
      queue: (desk) => {
        desk.range(sheet, area).formulas = written;
      },
    });
    rows = [];
    bytes = 0;
  };
  for (const [i, cells] of block.cells.entries()) {
    const row = cells.map(turn);
    rows.push(row);
    bytes += bytesOfRow(row);
    if (bytes > PIECE_BYTES) finish(block.row + i + 1);
  }
  finish(block.row + block.cells.length);
  return steps;
}
