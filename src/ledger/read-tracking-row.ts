import type { Cell, Row } from "./cell.ts";
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
}

/** One line as ledger facts: a row for each build it holds. */
export function readTrackingRow(
  line: TrackingLine,
  columns: readonly TrackingColumn[],
  reading: TrackingReading,
) {
  const problems: TrackingProblem[] = [];
  const blocks = [...new Set(columns.map(({ block }) => block))].filter((block) => block > 0);
  const rows = (blocks.length === 0 ? [0] : blocks).flatMap((block) => {
    const own = columns.flatMap((column, place) => (column.block === block && block > 0 ? [place] : []));
    if (block > 0 && own.every((place) => isBlank(line.cells[place] ?? ""))) return [];
    const row = oneBuild(line, columns, block, reading, problems);
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

const TELLING = /(Mean|Sd)$|^(verdict|ordered|chosen|chance)$/;
const textOf = (cell: Cell | undefined) => String(cell ?? "").trim();
const said = (line: TrackingLine) => line.cells.filter((cell) => cell !== "").join(" | ");

function oneBuild(
  line: TrackingLine,
  columns: readonly TrackingColumn[],
  block: number,
  { decimal, order }: TrackingReading,
  problems: TrackingProblem[],
): Row {
  const row: Record<string, Cell> = { player: line.player ?? null, club: line.club ?? null, date: null };
  const notes: string[] = [];
  const problem = (heading: string, cell: string, why: string) =>
    problems.push({ line: line.line, cell: `${heading}: ${cell}`, why });
  const setDay = (heading: string, cell: string) => {
    row.date = readDay(cell, order);
    if (row.date === null) problem(heading, cell, "no day, or one whose order is not known");
  };
  if (line.day) setDay("Date", line.day);
  for (const [place, column] of columns.entries()) {
    const cell = line.cells[place] ?? "";
    if (isBlank(cell) || (column.block !== 0 && column.block !== block)) continue;
    const { key, metric, unit, heading } = column;
    if (key === null) {
      if (heading !== "") notes.push(`${heading}: ${cell}`);
      else problem(`column ${place + 1}`, cell, "stands under no heading");
    } else if (metric) {
      const found = trackingFigure(cell, metric, unit, decimal);
      if (!found) problem(heading, cell, "is no figure, or in a unit that this cannot have");
      else {
        row[key] = found.mean;
        if (found.sd !== null) row[`${metric}Sd`] = found.sd;
      }
    } else if (key === "date") setDay(heading, cell);
    else if (key === "kept") countShots(row, cell, () => problem(heading, cell, "is no count"));
    else if (key === "shaftWeight" || key === "length" || key === "loft" || key === "tempo") {
      row[key] = trackingMeasure(cell, key, unit, decimal);
      if (row[key] === null) problem(heading, cell, "is no figure in a unit that this can have");
    } else if (key === "chosen") {
      row.chosen = /^(y|yes|x|✓|✔|true|ja|j|oui|si|sí|won|winner|best|1|\*)$/i.test(cell);
    } else if (key === "verdict") row.verdict = verdictOf(cell) ?? cell;
    else if (key === "chance") {
      const share = /^(\d+(?:[.,]\d+)?)\s*%?$/.exec(cell);
      const figure = Number(share?.[1]?.replace(",", "."));
      row.chance = share ? (cell.includes("%") || figure > 1 ? figure / 100 : figure) : null;
      if (row.chance === null) problem(heading, cell, "is no chance");
    } else if (key === "hand") row.hand = /^l/i.test(cell) ? "left" : "right";
    else if (key === "note") notes.unshift(cell);
    else row[key] = cell;
  }
  if (/^(?:y|yes|x|✓|✔|ja|oui|si|sí|true)$/i.test(textOf(row.ordered))) row.ordered = row.build ?? null;
  if (/^(?:n|no|nein|non|false|-)$/i.test(textOf(row.ordered))) row.ordered = null;
  for (const key of Object.keys(row)) {
    const metric = /^(.*)Mean$/.exec(key)?.[1];
    if (metric && typeof row.kept === "number") row[`${metric}N`] = row.kept;
  }
  row.note = notes.length === 0 ? null : notes.join("; ");
  return row;
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
