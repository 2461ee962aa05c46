import { columnOf, type Section } from "./section.ts";
import { isSummaryLabel } from "./summary-label.ts";

interface Watched {
  readonly index: number;
  readonly holds: "build" | "shot" | "other";
  /** Cells known to be no label. A column of times fills it with what never comes again, so it is kept short. */
  readonly harmless: Set<string>;
  last: string | undefined;
}

const ENOUGH = 500;

/**
 * Looks for summary words where a row's label stands: in the columns of names, and in a first column without a
 * known heading. It remembers what it has seen, for names repeat from row to row.
 */
export class LabelWatch {
  readonly #builds: Set<string>;
  readonly #watched: Watched[];
  readonly #shot: number;
  #lastShot = 0;

  /** @param builds names of builds met so far, for labels such as "Average 95 g mid"; those met here are added */
  constructor(section: Section, builds: Set<string>) {
    this.#builds = builds;
    this.#shot = columnOf(section, "shot")?.index ?? -1;
    this.#watched = section.columns.flatMap(({ key, header, index }): Watched[] => {
      const name = key === "build" || key === "club" || key === "shot" || key === "time" || key === "keep";
      if (!name && !(key === null && (header === "" || index === 0))) return [];
      const holds = key === "build" || key === "shot" ? key : "other";
      return [{ index, holds, harmless: new Set(), last: undefined }];
    });
  }

  /** The cell that labels this row as a summary; empty where none does. */
  summaryIn(cells: readonly string[]): string {
    for (const column of this.#watched) {
      const cell = cells[column.index];
      // Stryker disable next-line all: an empty cell and one that was found harmless are no labels, as is found out below
      if (cell === undefined || cell === "" || isHarmless(cell, column)) continue;
      const label = isSummaryLabel(cell, this.#builds);
      if (label && (column.holds === "shot" || !this.#isNextShot(cells))) return cell;
      if (column.holds === "build") this.#meet(cell);
      // Stryker disable next-line all: what is not remembered is looked at again
      if (!label) remember(cell, column);
    }
    return "";
  }

  /** A new build may make labels of cells that were harmless. */
  #meet(build: string): void {
    if (this.#builds.has(build) || this.#builds.size >= ENOUGH) return;
    this.#builds.add(build);
    for (const column of this.#watched) {
      column.harmless.clear();
      column.last = undefined;
    }
  }

  shotSeen(cells: readonly string[]): void {
    if (this.#shot >= 0) this.#lastShot = Number(cells[this.#shot] || Number.NaN);
  }

  /** A row that carries the number after the last shot's is a shot, whatever its build is called. */
  #isNextShot(cells: readonly string[]): boolean {
    const shot = Number(cells[this.#shot] || Number.NaN);
    return shot === 1 || shot === this.#lastShot + 1;
  }
}

// Stryker disable all: these only spare a look at what is no label
/** Most cells are the same as the one above, or a number that comes once: 7, 12:30, S-1. */
function isHarmless(cell: string, column: Watched): boolean {
  if (cell === column.last || isNumbered(cell)) return true;
  if (!column.harmless.has(cell)) return false;
  column.last = cell;
  return true;
}

function remember(cell: string, column: Watched): void {
  if (column.harmless.size < ENOUGH) column.harmless.add(cell);
  column.last = cell;
}

/** Ends with a digit, and has no letter but perhaps its first: no summary word is as short. */
function isNumbered(cell: string): boolean {
  const last = cell.charCodeAt(cell.length - 1);
  if (last < 48 || last > 57) return false;
  for (let at = 1; at < cell.length; at++) if (cell.charCodeAt(at) > 58) return false;
  return true;
}
// Stryker restore all
