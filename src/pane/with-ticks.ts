import type { ShotTable } from "../shots/shot-table.ts";
import type { Draft } from "./draft.ts";

/** The table with the fitter's ticks over its own; a shot that was not touched keeps what the table says. */
export function withTicks(table: ShotTable, ticks: Draft["ticks"]): ShotTable {
  if (Object.keys(ticks).length === 0) return table;
  return { ...table, keep: table.keep.map((keep, i) => ticks[table.row[i]!] ?? keep) };
}
