import { BuildNames } from "./build-names.ts";
import type { Gathered } from "./gathered.ts";
import { isMissing } from "./missing.ts";
import type { ReadOptions } from "./read-options.ts";
import { columnOf } from "./section.ts";
import type { TableProblem } from "./shot-table.ts";
import type { Records } from "./split-text.ts";

/** Which build each shot belongs to, and how that was known. */
export interface Builds {
  readonly build: string[];
  readonly notes: string[];
  readonly problems: TableProblem[];
}

/**
 * Names the build of every shot: from its cell, else from the title line above its block, else by the one name for
 * shots without a build.
 *
 * - Where the column names each build once and leaves the cells below blank, the name holds for the blanks too.
 * - Where some title lines say "Build:" or "Shaft:", only those count. Where at least two titles stand right above a
 *   header, those without one are remarks.
 * - A lone title above a single block gives way to a name given by the fitter, as it may only be the title of a file.
 */
export function assignBuilds(text: Records, shots: Gathered, options: ReadOptions): Builds {
  const names = new BuildNames();
  const unnamed = options.build?.trim() || "Build 1";
  const columns = shots.sections.map((section) => columnOf(section, "build")?.index ?? -1);
  const filled = shots.sections.map((_, section) => namesEachOnce(text, shots, section, columns[section]!));
  const titleOf = buildTitles(shots, options);
  const build = new Array<string>(shots.size);
  const problems: TableProblem[] = [];
  const count = { cells: 0, titles: 0, filled: 0, none: 0 };
  let lastCell: string | undefined;
  let lastName = "";
  for (let shot = 0; shot < shots.size; shot++) {
    const section = shots.section[shot]!;
    const column = columns[section]!;
    const cell = column < 0 ? "" : (text.cells[shots.record[shot]!]![column] ?? "");
    const title = titleOf[shots.title[shot]!] ?? "";
    if (cell === lastCell) {
      build[shot] = lastName;
      count.cells++;
    } else if (!isMissing(cell)) {
      lastName = names.name(cell);
      lastCell = cell;
      build[shot] = lastName;
      count.cells++;
    } else if (title !== "" && !(filled[section] && lastCell !== undefined)) {
      build[shot] = names.name(title);
      count.titles++;
    } else if (filled[section] && lastCell !== undefined) {
      build[shot] = lastName;
      count.filled++;
    } else {
      build[shot] = names.name(unnamed);
      count.none++;
      if (column >= 0)
        problems.push(noName(text.line(shots.record[shot]!), column + 1, cell.trim(), unnamed));
    }
  }
  return { build, notes: tell(count, unnamed), problems };
}

function noName(row: number, column: number, found: string, unnamed: string): TableProblem {
  const message = `Row ${row}, column ${column}: found no name of a build; a name would do. The shot stands under "${unnamed}".`;
  return { row, column, found, message };
}

/** Whether a column names a build at the first shot of each run at most, as merged cells come out. */
function namesEachOnce(text: Records, shots: Gathered, section: number, column: number): boolean {
  if (column < 0) return false;
  let before: string | undefined;
  for (let shot = 0; shot < shots.size; shot++) {
    if (shots.section[shot] !== section) continue;
    const cell = text.cells[shots.record[shot]!]![column] ?? "";
    if (cell === before && cell !== "") return false;
    before = cell;
  }
  return true;
}

/** For each title the name of the build that it gives to the shots below; empty where it gives none. */
function buildTitles({ titles, title, size, sections }: Gathered, options: ReadOptions): string[] {
  const explicit = titles.some(({ says }) => says === "build");
  const headed = titles.filter((line) => line.says === "perhaps a build" && line.headed).length >= 2;
  const counts = titles.map(
    (line) =>
      line.says === "build" || (!explicit && line.says === "perhaps a build" && (!headed || line.headed)),
  );
  const names: string[] = [];
  let name = "";
  titles.forEach((line, index) => {
    if (counts[index]) name = line.text;
    names.push(name);
  });
  const used = new Set(title.subarray(0, size));
  const distinct = new Set([...used].map((index) => names[index] ?? ""));
  const named = sections.some((section) => columnOf(section, "build"));
  if (!explicit && (named || (distinct.size === 1 && options.build?.trim())))
    return insideOnly(titles, names, named);
  return names;
}

/** Beside a column of builds, only a title in the midst of the table can name one. */
function insideOnly(titles: Gathered["titles"], names: string[], named: boolean): string[] {
  if (!named) return [];
  return names.map((name, index) => (titles[index]!.inside ? name : ""));
}

function tell(count: Record<"cells" | "titles" | "filled" | "none", number>, unnamed: string): string[] {
  const notes: string[] = [];
  if (count.cells > 0) notes.push("Builds were taken from their column.");
  if (count.filled > 0) {
    notes.push(
      `${shots(count.filled)} with a blank build took the name above, as each name stands only once.`,
    );
  }
  if (count.titles > 0) notes.push("Builds were taken from the title lines above the shots.");
  if (count.none > 0)
    notes.push(
      `${shots(count.none)} without a build ${count.none === 1 ? "stands" : "stand"} under "${unnamed}".`,
    );
  return notes;
}

function shots(count: number): string {
  return count === 1 ? "1 shot" : `${count} shots`;
}
