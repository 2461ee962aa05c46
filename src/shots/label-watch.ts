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
      if (cell === undefined || cell === "" || cell === column.last) continue;
      if (column.holds !== "build" && isNumbered(cell)) continue;
      if (column.harmless.has(cell)) {
        column.last = cell;
        continue;
      }
      if (isSummaryLabel(cell, this.#builds) && !(column.holds !== "shot" && this.#isNextShot(cells)))
        return cell;
      if (column.harmless.size < ENOUGH) column.harmless.add(cell);
      if (column.holds === "build" && this.#builds.size < ENOUGH) this.#builds.add(cell);
      column.last = cell;
    }
    return "";
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

/** A cell such as "7", "12:30" or "S-1", which is no label; one that only begins so may be: "95 g mid average". */
function isNumbered(cell: string): boolean {
  const last = cell.charCodeAt(cell.length - 1);
  if (last < 48 || last > 57) return false;
  for (let at = 0; at < 3; at++) {
    const code = cell.charCodeAt(at);
    if (code >= 48 && code <= 57) return true;
  }
  return false;
}
