import { invalid, type Outcome } from "../outcome/problem.ts";
import { assignBuilds } from "./assign-builds.ts";
import { buildHint } from "./build-hint.ts";
import { columnReadings } from "./column-readings.ts";
import { contradictions } from "./contradictions.ts";
import { extrasOf } from "./extras-of.ts";
import { gatherShots } from "./gather-shots.ts";
import { findHeader } from "./header-row.ts";
import { keepOf } from "./keep-of.ts";
import { namesOf } from "./names-of.ts";
import type { ReadOptions } from "./read-options.ts";
import { readingNotes } from "./reading-notes.ts";
import type { ShotTable } from "./shot-table.ts";
import { sourceOf } from "./source-of.ts";
import type { Records } from "./split-text.ts";

/**
 * Makes shots of records that are cut into cells already. Yields the share done between steps, so that whoever reads a
 * long table can tell how far it is; `readShots` says what the table holds.
 */
export function* readRecords(
  records: Records,
  delimiter: string,
  options: ReadOptions,
): Generator<number, Outcome<ShotTable>> {
  const header = findHeader(records.cells);
  if (header < 0 && !options.columns) {
    const { length } = records.cells;
    const none =
      length === 1
        ? "Row 1, the only one, has no"
        : `None of the ${length} rows, row 1 to ${records.line(length - 1)}, has`;
    return invalid(
      `${none} headings such as Ball speed, Carry or Offline; a row with them above the shots would do.`,
    );
  }
  const shots = yield* gatherShots(records, header, options);
  if (shots.size === 0) {
    const row = header < 0 ? 1 : records.line(header) + 1;
    return invalid(
      `There is no row with a figure from row ${row} on; a row a shot below the headings would do.`,
    );
  }
  yield 1;
  const builds = assignBuilds(records, shots, options);
  const row = new Array<number>(shots.size);
  for (let shot = 0; shot < shots.size; shot++) row[shot] = records.line(shots.record[shot]!);
  const kept = keepOf(records, shots, row);
  yield 1;
  const problems = [
    ...shots.problems,
    ...builds.problems,
    ...kept.problems,
    ...contradictions(shots.values, row, sourceOf(records, shots)),
  ].sort((a, b) => a.row - b.row || a.column - b.column);
  yield 1;
  const extras = extrasOf(records, shots);
  const hint = new Set(builds.build).size === 1 ? buildHint(extras, shots.size) : null;
  return {
    size: shots.size,
    row,
    build: builds.build,
    club: namesOf(records, shots, "club"),
    shot: namesOf(records, shots, "shot"),
    time: namesOf(records, shots, "time"),
    keep: kept.keep,
    values: shots.values,
    extras,
    columns: columnReadings(shots),
    problems,
    skipped: [...shots.skipped].sort((a, b) => a.row - b.row),
    notes: [...readingNotes(records, delimiter, shots, options), ...builds.notes, ...(hint ? [hint] : [])],
  };
}
