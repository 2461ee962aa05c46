import { bisector } from "d3-array";
import type { Block, CellValue, SheetPlan } from "../../sheets/plan.ts";
import { spillsOf } from "../../sheets/spills.ts";
import { isAwkward } from "./file-text.ts";
import type { Band } from "./painted-bands.ts";

/** Rows under each other that look like the row `pattern`, which the library writes. Rows count from 0. */
export interface LongRun {
  readonly pattern: number;
  readonly first: number;
  readonly column: number;
  readonly cells: readonly (readonly CellValue[])[];
}

/** Blocks with fewer rows are left to the library altogether. */
const LONG = 500;

/**
 * Takes the rows of long tables out of what the library writes: it keeps several objects for each cell, which for
 * 100,000 shots is most of a gigabyte. Only rows that look like one above them are taken.
 */
export class LongRuns {
  readonly all: LongRun[] = [];
  readonly #taken = new Set<number>();
  readonly #special: ReadonlySet<number>;
  #pattern: { readonly block: Block; readonly band: Band | undefined; readonly row: number } | undefined;

  constructor(
    private readonly sheet: SheetPlan,
    private readonly bands: readonly Band[],
  ) {
    const heights = sheet.heights.flatMap(({ row, rows }) => Array.from({ length: rows }, (_, i) => row + i));
    const spilled = spillsOf(sheet).flatMap(({ area }) =>
      Array.from({ length: area.rows }, (_, i) => area.row + i),
    );
    this.#special = new Set([...heights, ...spilled, ...sheet.notes.map(({ row }) => row)]);
  }

  bandOf(row: number): Band | undefined {
    const band = this.bands[bandsByRow.right(this.bands, row) - 1];
    return band && row < band.row + band.rows ? band : undefined;
  }

  has(row: number): boolean {
    return this.#taken.has(row);
  }

  /** A plain row that the library writes: those below may look like it. */
  offer(block: Block, row: number): void {
    if (this.#sharesNoRows(block)) this.#pattern = { block, band: this.bandOf(row), row };
  }

  /** Whether row `i` of a block needs nothing but a pattern; then it is taken. */
  take(block: Block, i: number): boolean {
    const row = block.row + i;
    const pattern = this.#pattern;
    const same = pattern?.block === block && pattern.band === this.bandOf(row);
    if (!same || this.#special.has(row) || !isPlainRow(block.cells[i]!)) return false;
    this.#taken.add(row);
    const last = this.all.at(-1);
    if (last && last.pattern === pattern.row && last.first + last.cells.length === row) {
      (last.cells as (readonly CellValue[])[]).push(block.cells[i]!);
    } else {
      this.all.push({ pattern: pattern.row, first: row, column: block.column, cells: [block.cells[i]!] });
    }
    return true;
  }

  #sharesNoRows(block: Block): boolean {
    return (
      block.cells.length >= LONG &&
      this.sheet.blocks.every(
        (other) =>
          other === block ||
          other.row >= block.row + block.cells.length ||
          block.row >= other.row + other.cells.length,
      )
    );
  }
}

const bandsByRow = bisector((band: Band) => band.row);

/** A row without text that needs a mark of its own, and without a formula that fills more cells than its own. */
export function isPlainRow(cells: readonly CellValue[]): boolean {
  return cells.every((value) =>
    typeof value === "string" ? !isAwkward(value) : typeof value !== "object" || !value?.spills,
  );
}
