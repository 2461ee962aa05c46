import type { ShotTable } from "../shots/shot-table.ts";
import type { Draft } from "./draft.ts";

/** The table with builds called what the fitter calls them. Two builds given one name become one. */
export function withBuildNames(table: ShotTable, builds: Draft["builds"]): ShotTable {
  const renamed = new Map(
    Object.entries(builds).flatMap(([was, { name }]) => (name?.trim() ? [[was, name.trim()]] : [])),
  );
  if (renamed.size === 0) return table;
  return { ...table, build: table.build.map((was) => renamed.get(was) ?? was) };
}
