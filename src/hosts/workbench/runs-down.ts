import type { Area } from "../../sheets/plan.ts";

/**
 * Cells that have the same value, one below the other, as one area: fed row by row, answered column by column. Cells
 * that have no value are in no area.
 */
export class RunsDown<Value> {
  readonly #columns: { readonly row: number; readonly value: Value; rows: number }[][] = [];

  add(row: number, column: number, value: Value | undefined): void {
    if (value === undefined) return;
    this.#columns[column] ??= [];
    const runs = this.#columns[column];
    const last = runs.at(-1);
    if (last?.value === value && last.row + last.rows === row) last.rows++;
    else runs.push({ row, value, rows: 1 });
  }

  all(): [Area, Value][] {
    return this.#columns.flatMap((runs, column) =>
      runs.map(({ row, rows, value }): [Area, Value] => [{ row, column, rows, columns: 1 }, value]),
    );
  }
}
