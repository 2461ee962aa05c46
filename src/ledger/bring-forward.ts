import { headingKey } from "../sheets/heading-key.ts";
import type { Cell, Table } from "./cell.ts";
import { LEDGER, SCHEMA_VERSION } from "./schema.ts";
import { columnsByHeading } from "./table-rows.ts";

/** A table in today's form, and what had to be done to it. */
export interface BroughtForward {
  readonly table: Table;
  readonly from: number;
  /** A sentence for each kind of change; none where the table was in today's form. */
  readonly changes: readonly string[];
}

/** What the first form called its columns, and what they are called now. All others kept their names. */
const RENAMED_SINCE_1: ReadonlyMap<string, string> = new Map([
  ["row", "Entry"],
  ["shaft (g)", "Shaft weight (g)"],
  ["carry mean (yd)", "Carry (yd)"],
  ["ball speed mean (mph)", "Ball speed (mph)"],
  ["club speed mean (mph)", "Club speed (mph)"],
  ["spin mean (rpm)", "Spin rate (rpm)"],
  ["launch mean (°)", "Launch angle (°)"],
  ["chance (%)", "Chance"],
]);

/**
 * The ledger in today's form. The first form counted chances in hundredths, said "yes" for an order, called some
 * columns otherwise and had one count for all figures of a row. No row and no column goes: what has no counterpart,
 * the user's own columns among them, stays as it is under its heading. Rows that are in today's form already are left
 * alone, so a table whose rows are of both forms comes through, and doing it twice does nothing more.
 */
export function bringForward(table: Table, from: number = formOf(table)): BroughtForward {
  if (from >= SCHEMA_VERSION) return { table, from, changes: [] };
  const changes: string[] = [];
  const taken = new Set(table.headings.map(headingKey));
  const headings = table.headings.map((heading) => {
    const now = RENAMED_SINCE_1.get(headingKey(heading));
    if (now === undefined || taken.has(headingKey(now))) return heading;
    changes.push(`"${heading}" is called "${now}" now.`);
    return now;
  });
  const at = (heading: string) => headings.findIndex((one) => headingKey(one) === headingKey(heading));
  const form = at("Form");
  const chance = headings.findIndex((_, i) => headingKey(table.headings[i]!) === "chance (%)");
  const ordered = at("Ordered");
  const build = at("Build");
  const counts = [...columnsByHeading(LEDGER).values()].filter(
    ({ key, heading }) => key.endsWith("N") && at(heading) < 0 && at(meanHeading(key)) >= 0,
  );
  const kept = at("Kept");
  const rows = table.rows.map((cells) => {
    const blank = cells.every((cell) => cell === null || cell === "");
    if (blank || (form >= 0 && Number(cells[form] ?? 1) >= SCHEMA_VERSION))
      return [...cells, ...counts.map(() => null)];
    const row = [...cells];
    if (form >= 0) row[form] = SCHEMA_VERSION;
    if (chance >= 0 && typeof row[chance] === "number") row[chance] = row[chance] / 100;
    if (ordered >= 0) row[ordered] = orderedNow(row[ordered] ?? null, row[build] ?? null);
    const each = counts.map(({ key }): Cell => {
      const mean = row[at(meanHeading(key))] ?? null;
      return mean === null ? 0 : kept >= 0 ? (row[kept] ?? null) : null;
    });
    return [...row, ...each];
  });
  if (chance >= 0) changes.push("Chances are counted from 0 to 1 now.");
  if (ordered >= 0) changes.push('"Ordered" names what was ordered now; "yes" became the build\'s name.');
  if (counts.length > 0) changes.push(`${counts.length} counts were added, each as many as were kept.`);
  const all = [...headings, ...counts.map(({ heading }) => heading)];
  if (form >= 0) return { table: { headings: all, rows }, from, changes };
  changes.push("Each row says which form it is in now.");
  return {
    table: {
      headings: [...all, "Form"],
      rows: rows.map((row) => [...row, row.some((cell) => cell !== null) ? SCHEMA_VERSION : null]),
    },
    from,
    changes,
  };
}

/** The oldest form among the rows; the first form had no column that says. */
export function formOf(table: Table): number {
  const column = table.headings.findIndex((heading) => headingKey(heading) === "form");
  if (column < 0) return table.headings.some((heading) => headingKey(heading) === "row") ? 1 : SCHEMA_VERSION;
  // A table keeps an empty row when all others have gone.
  const filled = table.rows.filter((row) => row.some((cell) => cell !== null));
  const forms = filled.map((row) => Number(row[column] ?? 1)).filter(Number.isFinite);
  return forms.reduce((least, form) => Math.min(least, form), SCHEMA_VERSION);
}

const meanHeading = (countKey: string) =>
  LEDGER.columns.find(({ key }) => key === `${countKey.slice(0, -1)}Mean`)!.heading;

function orderedNow(was: Cell, build: Cell): Cell {
  if (was === true || /^(yes|y|true)$/i.test(String(was ?? ""))) return build ?? "yes";
  return was === false || /^(no|n|false)$/i.test(String(was ?? "")) ? null : was;
}
