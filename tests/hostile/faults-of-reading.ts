import { isProblem } from "../../src/outcome/problem.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";
import type { HostileTable } from "./hostile-table.ts";

/** What reading came to: a table or a sentence, and what is wrong with it. */
export interface Reading {
  readonly table: ShotTable | null;
  readonly faults: readonly string[];
}

/**
 * Reads a hostile table and holds the answer to what the reader promises: every record is a shot or is listed as
 * skipped, once; every column has an entry a shot; a figure is a number or missing; every problem points into the text.
 */
export function faultsOfReading({ text, delimiter, starts }: HostileTable, told: boolean): Reading {
  const table = readShots(text, told ? { delimiter } : {});
  if (isProblem(table))
    return { table: null, faults: table.message.trim() === "" ? ["an empty sentence"] : [] };
  const faults: string[] = [];
  const seen = [...table.row, ...table.skipped.map(({ row }) => row)].sort((a, b) => a - b);
  const lines = text.replace(/(\r\n|\r|\n)$/, "").split(/\r\n|\r|\n/).length;
  const due =
    told && starts ? starts : text.includes('"') ? null : Array.from({ length: lines }, (_, i) => i + 1);
  if (due && due.join() !== seen.join()) faults.push(`rows lost or doubled: ${seen} for ${due}`);
  if (new Set(seen).size < seen.length) faults.push("a row told twice");
  if (seen[0] !== 1 || seen.at(-1)! > lines)
    faults.push(`rows outside the text: ${seen[0]} to ${seen.at(-1)} of ${lines}`);
  const { size, row, build, club, shot, time, keep, values, extras } = table;
  for (const column of [
    row,
    build,
    club,
    shot,
    time,
    keep,
    ...values.values(),
    ...extras.map(({ cells }) => cells),
  ]) {
    if (column.length !== size) faults.push(`a column of ${column.length} for ${size} shots`);
  }
  if (build.some((name) => typeof name !== "string" || name === "")) faults.push("a shot without a build");
  for (const [key, column] of values) {
    if (column.some((value) => Math.abs(value) === Infinity)) faults.push(`${key} is infinite`);
  }
  for (const problem of table.problems) {
    if (problem.message === "" || problem.column < 0 || !(problem.row >= 1 && problem.row <= lines)) {
      faults.push(`a problem that points nowhere: ${JSON.stringify(problem).slice(0, 200)}`);
    }
  }
  return { table, faults };
}
