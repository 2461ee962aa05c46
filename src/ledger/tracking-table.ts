import { invalid, type Outcome } from "../outcome/problem.ts";
import { bareUnit, isUnitRow } from "../shots/header-row.ts";
import { isMissing } from "../shots/missing.ts";
import { plainLines, splitText } from "../shots/split-text.ts";
import type { TrackingProblem } from "./read-tracking-row.ts";
import { readDay } from "./tracking-dates.ts";
import {
  correctedHeading,
  readTrackingHeading,
  TRACKING_KEYS,
  type TrackingColumn,
} from "./tracking-heading.ts";

/** A line below the headings, with what lines above it said for it. */
export interface TrackingLine {
  /** Counted from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  /** From a line of its own above. */
  readonly player?: string;
  readonly day?: string;
  readonly club?: string;
}

export interface TrackingTable {
  readonly columns: readonly TrackingColumn[];
  readonly lines: readonly TrackingLine[];
  readonly left: readonly TrackingProblem[];
  readonly decimal: "." | ",";
}

/** How far down the headings may stand. */
const TOP = 25;

/** Cuts a tracking sheet into columns and lines, and names the lines that are neither. */
export function readTrackingTable(
  text: string,
  corrections: Readonly<Record<string, string | null>>,
): Outcome<TrackingTable> {
  const strange = Object.values(corrections).find((key) => key !== null && !TRACKING_KEYS.includes(key));
  if (typeof strange === "string") {
    return invalid(`A tracking sheet has no column "${strange}"; it may have ${TRACKING_KEYS.join(", ")}.`);
  }
  const cells = split(text).map((row) => row.map((cell) => cell.trim()));
  const strengths = cells.slice(0, TOP).map(strength);
  const at = strengths.indexOf(Math.max(...strengths, 2));
  if (at < 0) {
    return invalid(
      "No line has headings that a ledger knows, such as Date, Player, Shaft or Carry; a line with three would do.",
    );
  }
  let headings: readonly string[] = cells[at]!;
  let next = at + 1;
  const below = cells[next] ?? [];
  if (at > 0 && groups(cells[at - 1]!, headings)) headings = under(cells[at - 1]!, headings);
  else if (isSubheading(below)) {
    headings = under(headings, below);
    next++;
  }
  const units = cells[next] ?? [];
  const unitRow = isUnitRow(units);
  if (unitRow) next++;
  const columns = withTwins(
    headings.map((heading, place): TrackingColumn => {
      const read = readTrackingHeading(heading);
      const unit = read.unit || (unitRow ? bareUnit(units[place] ?? "") : "");
      const told = corrections[read.heading];
      return told === undefined ? { ...read, unit } : correctedHeading({ ...read, unit }, told);
    }),
    corrections,
  );
  const left: TrackingProblem[] = [];
  let above: Above = {};
  for (const [i, row] of cells.slice(0, at).entries()) {
    const filled = row.filter((cell) => cell !== "");
    // A name without a label may as well be that of the shop.
    const told = filled.length === 1 ? lineOfItsOwn(filled[0]!, true) : null;
    if (told) above = { ...above, ...told };
    else if (filled.length > 0 && !(i === at - 1 && groups(row, cells[at]!))) {
      left.push({ line: i + 1, cell: filled.join(" | "), why: "a title above the headings" });
    }
  }
  const lines = body(cells, next, columns, left, cells[at]!, above);
  return { columns, lines, left, decimal: decimalOf(cells.slice(next)) };
}

/** Of two columns that hold the same the first counts, or the one that somebody said does; the other goes into notes. */
function withTwins(
  columns: readonly TrackingColumn[],
  corrections: Readonly<Record<string, string | null>>,
): TrackingColumn[] {
  const same = (one: TrackingColumn, other: TrackingColumn) =>
    one.key === other.key && one.block === other.block;
  const told = ({ heading }: TrackingColumn) => corrections[heading] !== undefined;
  return columns.map((column) => {
    if (column.key === null || column.key === "note") return column;
    const alike = columns.filter((other) => same(other, column));
    const first = alike.find(told) ?? alike[0]!;
    return first === column ? column : { ...column, key: null, metric: null, twin: first.heading };
  });
}

type Above = { readonly player?: string; readonly day?: string; readonly club?: string };

/** Lines of figures, each with what a line by itself above it said: a player, a day, a club. */
function body(
  cells: readonly (readonly string[])[],
  from: number,
  columns: readonly TrackingColumn[],
  left: TrackingProblem[],
  headings: readonly string[],
  first: Above,
): TrackingLine[] {
  const lines: TrackingLine[] = [];
  const has = (key: string) => columns.some((column) => column.key === key);
  let above = first;
  let down: string[] = [];
  for (let at = from; at < cells.length; at++) {
    const row = cells[at]!;
    const filled = row.filter((cell) => cell !== "");
    if (filled.length === 0) {
      down = [];
      continue;
    }
    const said = filled.join(" | ");
    if (said === headings.filter((cell) => cell !== "").join(" | ")) {
      left.push({ line: at + 1, cell: said, why: "the headings once more" });
    } else if (
      /^(?:total|totals|sum|average|averages|mean|avg|overall|summe|gesamt|durchschnitt|schnitt|mittel|moyenne|media)\b/i.test(
        filled[0]!,
      )
    ) {
      left.push({ line: at + 1, cell: said, why: "a total or an average of other lines" });
    } else if (filled.length === 1) {
      const told = lineOfItsOwn(filled[0]!, has("player"));
      if (told) {
        above = "player" in told ? told : { ...above, ...told };
        down = [];
      } else
        left.push({
          line: at + 1,
          cell: said,
          why: "a line with one cell that names neither a player nor a day",
        });
    } else {
      // Cells merged downwards are filled in their first line only. A club does not reach down to the next player.
      const next = columns.some(({ key }, c) => key === "player" && row[c] && row[c] !== down[c]);
      const reaches = (key: string | null) => MERGED.has(key ?? "") && !(next && key === "club");
      down = columns.map(({ key }, c) => row[c] || (reaches(key) ? (down[c] ?? "") : ""));
      lines.push({
        line: at + 1,
        cells: columns.map(({ key }, c) => (MERGED.has(key ?? "") ? down[c]! : (row[c] ?? ""))),
        ...above,
      });
    }
  }
  return lines;
}

const MERGED: ReadonlySet<string> = new Set(["date", "player", "club", "place"]);

function lineOfItsOwn(cell: string, playerColumn: boolean): Above | null {
  const labelled =
    /^(player|name|customer|client|golfer|spieler|kunde|date|datum|day|club|schl[aä]ger)\s*[:=-]\s*(.+)$/i.exec(
      cell,
    );
  if (labelled) {
    const word = labelled[1]!.toLowerCase();
    if (/^(date|datum|day)$/.test(word)) return { day: labelled[2]! };
    return /^(club|schl)/.test(word) ? { club: labelled[2]! } : { player: labelled[2]! };
  }
  if (readDay(cell, "day first")) return { day: cell };
  const name = /^\p{Lu}[\p{L}'.-]+(?:,? \p{Lu}[\p{L}'.-]+){1,3}$/u.test(cell);
  return name && !playerColumn ? { player: cell } : null;
}

/** How many headings a ledger knows; a line with a figure in it is none. */
function strength(row: readonly string[]): number {
  const known = row.filter((cell) => cell !== "" && readTrackingHeading(cell).key !== null).length;
  const figures = row.filter((cell) => /^[\d.,±\s-]+$/.test(cell) && cell !== "").length;
  return figures > 0 ? 0 : known;
}

const SUB = /^(?:mean|avg\.?|average|sd|std\.?\s?dev\.?|stdev|±|n|ø|spread|mittel|streuung)$/i;

/** A second row of headings that says of each figure what it is. */
function isSubheading(row: readonly string[]): boolean {
  return (
    row.filter((cell) => SUB.test(cell)).length >= 2 && row.every((cell) => cell === "" || SUB.test(cell))
  );
}

/** Whether the row above groups these headings: it has fewer cells, and some headings are mere "mean" and "SD". */
function groups(above: readonly string[], headings: readonly string[]): boolean {
  const filled = above.filter((cell) => cell !== "").length;
  return filled >= 2 && headings.filter((cell) => SUB.test(cell)).length >= 2;
}

/** Two rows of headings as one: what is merged above counts until the next one. */
function under(above: readonly string[], below: readonly string[]): string[] {
  let group = "";
  return Array.from({ length: Math.max(above.length, below.length) }, (_, c) => {
    const sub = below[c] ?? "";
    group = above[c] || group;
    if (sub === "") return above[c] ?? "";
    if (/^n$/i.test(sub)) return sub;
    return SUB.test(sub) ? `${group} ${sub}`.trim() : sub;
  });
}

/** The decimal mark that the figures speak for; a full stop where none does. */
function decimalOf(cells: readonly (readonly string[])[]): "." | "," {
  let [commas, stops] = [0, 0];
  for (const cell of cells.flat()) {
    if (/^[+-]?\d{1,3},\d{1,2}(\D|$)/.test(cell)) commas++;
    if (/^[+-]?\d+\.\d{1,2}(\D|$)/.test(cell) && !/\d\.\d+\.\d/.test(cell)) stops++;
  }
  return commas > stops ? "," : ".";
}

/** The delimiter under which some line has the most headings that a ledger knows. */
function split(text: string): string[][] {
  const plain = plainLines(text);
  const tries = ["\t", ";", "|", ","].map((delimiter) =>
    splitText(plain, delimiter).cells.map((row) => [...row]),
  );
  const score = (cells: string[][]) =>
    Math.max(0, ...cells.slice(0, TOP).map((row) => strength(row.map((cell) => cell.trim()))));
  return tries.reduce((best, one) => (score(one) > score(best) ? one : best));
}

/** Whether a cell says that there is nothing. */
export const isBlank = (cell: string) => cell === "" || isMissing(cell);
