import type { UnitSet } from "../shots/unit-set.ts";
import type { Cell, Row } from "./cell.ts";
import { namedBuild } from "./named-build.ts";
import { type DayOrder, readDay } from "./tracking-dates.ts";
import { trackingFigure, trackingMeasure } from "./tracking-figure.ts";
import type { TrackingColumn } from "./tracking-heading.ts";
import { isBlank, type TrackingLine } from "./tracking-table.ts";

/** A line or a cell that did not become anything. */
export interface TrackingProblem {
  /** Counted from 1; 0 for a whole column. */
  readonly line: number;
  readonly cell: string;
  readonly why: string;
}

export interface TrackingReading {
  readonly decimal: "." | ",";
  readonly order: DayOrder | null;
  /** What a figure is in that states no unit itself, under a heading that states none. */
  readonly units: UnitSet;
  /** All builds of the sheet, for words that name one. */
  readonly builds: readonly string[];
  /** Hears of a figure that was taken to be in a unit which nobody stated. */
  readonly assumed: (column: TrackingColumn, unit: string) => void;
}

/** One line as ledger facts: a row for each build it holds. A row has only the keys that the line says something of. */
export function readTrackingRow(
  line: TrackingLine,
  columns: readonly TrackingColumn[],
  reading: TrackingReading,
) {
  const problems: TrackingProblem[] = [];
  const blocks = [...new Set(columns.map(({ block }) => block))].filter((block) => block > 0);
  const filled = blocks.filter((block) =>
    columns.some((column, place) => column.block === block && !isBlank(line.cells[place] ?? "")),
  );
  const beside = filled.flatMap((block) => buildIn(line, columns, block) ?? []);
  const rows = (blocks.length === 0 ? [0] : filled).flatMap((block) => {
    const row = oneBuild(line, columns, block, { ...reading, beside }, problems);
    if (textOf(row.build) === "") {
      problems.push({ line: line.line, cell: said(line), why: "names no build" });
      return [];
    }
    if (!Object.keys(row).some((key) => TELLING.test(key) && row[key] !== null)) {
      problems.push({ line: line.line, cell: said(line), why: "has no figure, verdict or order" });
      return [];
    }
    return [row];
  });
  const unique = problems.filter(
    (one, i) => problems.findIndex((other) => other.cell === one.cell && other.why === one.why) === i,
  );
  return { rows, problems: unique };
}

/** What a line calls the build of a block; block 0 where it holds one build alone. */
export function buildIn(
  { cells }: TrackingLine,
  columns: readonly TrackingColumn[],
  block: number,
): string | null {
  const at = (of: number) => columns.findIndex((column) => column.key === "build" && column.block === of);
  const place = at(block) < 0 ? at(0) : at(block);
  const cell = cells[place] ?? "";
  return isBlank(cell) ? null : cell;
}

const TELLING = /(Mean|Sd)$|^(verdict|ordered|chosen|chance)$/;
const textOf = (cell: Cell | undefined) => String(cell ?? "").trim();
const said = (line: TrackingLine) => line.cells.filter((cell) => cell !== "").join(" | ");

interface OneBuildReading extends TrackingReading {
  /** Builds that the line holds side by side; none where it holds one alone. */
  readonly beside: readonly string[];
}

function oneBuild(
  line: TrackingLine,
  columns: readonly TrackingColumn[],
  block: number,
  reading: OneBuildReading,
  problems: TrackingProblem[],
): Row {
  const { decimal, order, units } = reading;
  const build = buildIn(line, columns, block);
  const row: Record<string, Cell> = {
    ...(line.player ? { player: line.player } : {}),
    ...(line.club ? { club: line.club } : {}),
    ...(build === null ? {} : { build }),
  };
  const notes: string[] = [];
  const problem = (heading: string, cell: string, why: string) =>
    problems.push({ line: line.line, cell: `${heading}: ${cell}`, why });
  const set = (key: string, value: Cell, heading: string, cell: string, why: string) => {
    if (value === null) problem(heading, cell, why);
    else row[key] = value;
  };
  const setDay = (heading: string, cell: string) =>
    set("date", readDay(cell, order), heading, cell, "no day, or one whose order is not known");
  if (line.day) setDay("Date", line.day);
  for (const [place, column] of columns.entries()) {
    const cell = line.cells[place] ?? "";
    if (isBlank(cell) || (column.block !== 0 && column.block !== block)) continue;
    const { key, metric, unit, heading } = column;
    if (key === null) {
      if (heading !== "") notes.push(`${heading}: ${cell}`);
      else problem(`column ${place + 1}`, cell, "stands under no heading");
    } else if (metric) {
      const found = trackingFigure(cell, metric, unit, decimal, units);
      if (!found) problem(heading, cell, "is no figure, or in a unit that this cannot have");
      else {
        row[key] = column.leftPositive && !found.sided && key.endsWith("Mean") ? 0 - found.mean : found.mean;
        if (found.sd !== null) row[`${metric}Sd`] = found.sd;
        if (found.assumed !== null) reading.assumed(column, found.assumed);
      }
    } else if (key === "date") setDay(heading, cell);
    else if (key === "kept") countShots(row, cell, () => problem(heading, cell, "is no count"));
    else if (key === "shaftWeight" || key === "length" || key === "loft" || key === "tempo") {
      const found = trackingMeasure(cell, key, unit, decimal);
      set(key, found?.value ?? null, heading, cell, "is no figure in a unit that this can have");
      if (found && found.assumed !== null) reading.assumed(column, found.assumed);
    } else if (key === "chosen") {
      const found = chosenOf(cell, column.block === 0 ? block : 0, row, reading);
      set(key, found, heading, cell, "does not say which build of these");
    } else if (key === "ordered") {
      const found = orderedOf(cell, column.block === 0 ? block : 0, row, reading);
      if (found === undefined) problem(heading, cell, "does not say which build of these");
      else if (found !== OF_ANOTHER) row.ordered = found;
    } else if (key === "verdict") row.verdict = verdictOf(cell) ?? cell;
    else if (key === "chance") {
      const share = /^(\d+(?:[.,]\d+)?)\s*%?$/.exec(cell);
      const figure = Number(share?.[1]?.replace(",", "."));
      const chance = cell.includes("%") || figure > 1 ? figure / 100 : figure;
      set(key, share ? chance : null, heading, cell, "is no chance");
    } else if (key === "hand") set(key, handOf(cell), heading, cell, "is neither right nor left");
    else if (key === "note") notes.unshift(cell);
    else if (key !== "build") row[key] = cell;
    else if (cell !== build) notes.push(`${heading}: ${cell}`);
  }
  for (const key of Object.keys(row)) {
    const metric = /^(.*)Mean$/.exec(key)?.[1];
    if (metric && typeof row.kept === "number") row[`${metric}N`] = row.kept;
  }
  if (notes.length > 0) row.note = notes.join("; ");
  return row;
}

const YES = /^(?:y|yes|x|✓|✔|true|ja|j|oui|si|sí|won|winner|best|1|\*)$/i;
const NO = /^(?:n|no|nein|non|false|none|lost|0|-)$/i;

/**
 * Whether a cell says that this build was the one. `shared` is the place of the build on its line where the cell counts
 * for several builds side by side, else 0: there a mere "yes" names none of them, and a number names one by its place.
 */
function chosenOf(
  cell: string,
  shared: number,
  row: Row,
  { beside, builds }: OneBuildReading,
): boolean | null {
  const several = shared > 0 && beside.length > 1;
  if (several && /^#?[1-9]$/.test(cell)) return Number(cell.replace("#", "")) === shared;
  if (NO.test(cell)) return false;
  if (YES.test(cell)) return several ? null : true;
  const named = namedBuild(cell, shared > 0 ? beside : builds);
  return named === null ? null : named === row.build;
}

/** An order that is another build's, of which this row says nothing. */
const OF_ANOTHER = Symbol("of another");

/** What was ordered of this build; undefined where an order for several builds does not say of which. */
function orderedOf(
  cell: string,
  shared: number,
  row: Row,
  { beside, builds }: OneBuildReading,
): Cell | typeof OF_ANOTHER | undefined {
  const several = shared > 0 && beside.length > 1;
  if (NO.test(cell)) return null;
  if (YES.test(cell)) return several ? undefined : (row.build ?? null);
  const named = namedBuild(cell, shared > 0 ? beside : builds);
  if (named !== null) return named === row.build ? cell : OF_ANOTHER;
  return several ? undefined : cell;
}

/** In the words of English, German, French and Spanish sheets (common practice, no source). */
function handOf(cell: string): string | null {
  if (/^(?:l|lh|lhd?|left.*|links.*|gauch.*|zurd.*|izq.*)$/i.test(cell)) return "left";
  return /^(?:r|rh|rhd?|right.*|rechts.*|droit.*|diestr.*|derech.*)$/i.test(cell) ? "right" : null;
}

/** "6", "6 of 8", "6/8": kept and hit. */
function countShots(row: Record<string, Cell>, cell: string, refuse: () => void): void {
  const found = /^(\d+)(?:\s*(?:of|\/|von|out of|sur|de)\s*(\d+))?$/i.exec(cell);
  if (!found) {
    refuse();
    return;
  }
  row.kept = Number(found[1]);
  row.shots = Number(found[2] ?? found[1]);
}

/** Shops' words for how sure they were (common practice, no source). */
function verdictOf(cell: string): string | null {
  if (/^(clear|sure|certain|definite|klar|eindeutig)\b/i.test(cell)) return "clear";
  if (/^(leaning|likely|probable|probably|eher|wahrscheinlich)\b/i.test(cell)) return "leaning";
  return /^(too close|close|toss-?up|unsure|unclear|unklar|open)\b/i.test(cell) ? "too close to call" : null;
}
