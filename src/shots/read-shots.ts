import { invalid, type Outcome } from "../outcome/problem.ts";
import { assignBuilds } from "./assign-builds.ts";
import { contradictions, type Source } from "./contradictions.ts";
import { type Gathered, gatherShots } from "./gather-shots.ts";
import { findHeader } from "./header-row.ts";
import { readKeepColumn } from "./keep-column.ts";
import type { MetricKey } from "./metrics.ts";
import type { ReadOptions } from "./read-options.ts";
import { readingNotes } from "./reading-notes.ts";
import { columnOf } from "./section.ts";
import type { ColumnReading, ExtraColumn, ShotTable, TableProblem } from "./shot-table.ts";
import { sniffDelimiter } from "./sniff-delimiter.ts";
import { plainLines, type Records, splitText } from "./split-text.ts";

/**
 * Reads a table of shots as it was copied from a spreadsheet or a text file. It finds the delimiter, the decimal
 * mark, the header, the units and the builds by itself and says what it found; `options` puts right what it took for
 * something else. No figure is dropped silently: each record of the text is a shot or stands in `skipped`, each cell
 * that was not understood in `problems`.
 *
 * Rows count the lines of the text from 1; a record with a line break inside a quoted cell counts by its first line.
 *
 * A problem instead of a table only where there is no shot at all.
 */
export function readShots(text: string, options: ReadOptions = {}): Outcome<ShotTable> {
  const plain = plainLines(text);
  if (plain.trim() === "")
    return invalid("The text is empty; a table with a row of headings and a row a shot would do.");
  const delimiter = options.delimiter || sniffDelimiter(plain);
  const records = splitText(plain, delimiter);
  const header = findHeader(records.cells);
  if (header < 0 && !options.columns) {
    return invalid(
      `None of the ${records.cells.length} rows, row 1 to ${records.line(records.cells.length - 1)}, has headings such as Ball speed, Carry or Offline; a row with them above the shots would do.`,
    );
  }
  const shots = gatherShots(records, header, options);
  if (shots.size === 0) {
    const row = header < 0 ? 1 : records.line(header) + 1;
    return invalid(
      `There is no row with a figure from row ${row} on; a row a shot below the headings would do.`,
    );
  }
  const builds = assignBuilds(records, shots, options);
  const row = Array.from({ length: shots.size }, (_, shot) => records.line(shots.record[shot]!));
  const kept = keepOf(records, shots, row);
  const problems = [
    ...shots.problems,
    ...builds.problems,
    ...kept.problems,
    ...contradictions(shots.values, row, sourceOf(records, shots)),
  ].sort((a, b) => a.row - b.row || a.column - b.column);
  return {
    size: shots.size,
    row,
    build: builds.build,
    club: namesOf(records, shots, "club"),
    shot: namesOf(records, shots, "shot"),
    time: namesOf(records, shots, "time"),
    keep: kept.keep,
    values: shots.values,
    extras: extrasOf(records, shots),
    columns: columnReadings(shots),
    problems,
    skipped: [...shots.skipped].sort((a, b) => a.row - b.row),
    notes: [...readingNotes(records, delimiter, shots, options), ...builds.notes],
  };
}

/** A column of names, trimmed; a club that a title line names stands for the shots below it. */
function namesOf(text: Records, shots: Gathered, key: "club" | "shot" | "time"): string[] {
  const columns = shots.sections.map((section) => columnOf(section, key)?.index ?? -1);
  const titles: string[] = [];
  for (const title of shots.titles) titles.push(title.says === "club" ? title.text : (titles.at(-1) ?? ""));
  const names = new Array<string>(shots.size);
  for (let shot = 0; shot < shots.size; shot++) {
    const column = columns[shots.section[shot]!]!;
    if (column >= 0) names[shot] = text.cells[shots.record[shot]!]![column]?.trim() ?? "";
    else names[shot] = key === "club" ? (titles[shots.title[shot]!] ?? "") : "";
  }
  return names;
}

function keepOf(text: Records, shots: Gathered, rows: readonly number[]) {
  const columns = shots.sections.map((section) => columnOf(section, "keep")?.index ?? -1);
  if (columns.every((column) => column < 0))
    return { keep: new Array<boolean>(shots.size).fill(true), problems: [] };
  const columnAt = (shot: number) => columns[shots.section[shot]!]!;
  const cells = rows.map((_, shot) => text.cells[shots.record[shot]!]![columnAt(shot)] ?? "");
  const { keep, unclear } = readKeepColumn(cells);
  const problems = unclear.map((shot): TableProblem => {
    const [row, column, found] = [rows[shot]!, columnAt(shot) + 1, cells[shot]!.trim()];
    const message = `Row ${row}, column ${column} (Keep): found "${found}"; yes or no would do. The shot is kept.`;
    return { row, column, found, message };
  });
  return { keep, problems };
}

/** Unknown columns, all cells as text. One that holds nothing at all is only a gap. */
function extrasOf(text: Records, shots: Gathered): ExtraColumn[] {
  const extras = new Map<string, { header: string; cells: string[] }>();
  shots.sections.forEach((section, place) => {
    for (const { index, key, header } of section.columns) {
      if (key !== null) continue;
      const name = `${index}\n${header}`;
      const extra = extras.get(name) ?? { header: header || `Column ${index + 1}`, cells: [] };
      if (extra.cells.length === 0) extra.cells = new Array<string>(shots.size).fill("");
      extras.set(name, extra);
      for (let shot = 0; shot < shots.size; shot++) {
        if (shots.section[shot] === place)
          extra.cells[shot] = text.cells[shots.record[shot]!]![index]?.trim() ?? "";
      }
    }
  });
  return [...extras.entries()]
    .filter(([name, { cells }]) => !name.endsWith("\n") || cells.some((cell) => cell !== ""))
    .map(([, extra]) => extra);
}

function columnReadings(shots: Gathered): ColumnReading[] {
  const seen = new Set<string>();
  return shots.sections.flatMap((section) =>
    section.columns.flatMap(({ index, header, key, unit, unitFrom }) => {
      const name = `${index}\n${header}`;
      if (seen.has(name)) return [];
      seen.add(name);
      return [{ column: index + 1, header, key, unit, unitFrom }];
    }),
  );
}

function sourceOf(text: Records, shots: Gathered): Source {
  const index = (key: MetricKey, shot: number) =>
    columnOf(shots.sections[shots.section[shot]!]!, key)?.index ?? -1;
  return {
    column: (key, shot) => index(key, shot) + 1,
    found: (key, shot) => text.cells[shots.record[shot]!]![index(key, shot)] ?? "",
  };
}
