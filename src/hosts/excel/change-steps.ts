import type { TableCell, TableChange } from "../../sheets/table-change.ts";
import { enterRows, tableArea } from "./enter-rows.ts";
import type { Entry } from "./entry.ts";
import type { StandingTable } from "./standing-table.ts";
import { CALL, type Desk, type Step } from "./step.ts";

/** What carries a change out, in an order in which a table never covers what is not written yet. */
export function changeSteps(table: StandingTable, change: TableChange): Step[] {
  const width = table.headings.length + change.columns.length;
  const gone = new Set(change.remove);
  const left = table.rows - gone.size;
  const at = (desk: Desk, row: number, column: number, rows: number, columns: number) =>
    tableArea(desk, table.name, row, column, rows, columns);
  const enter = (row: number, entries: readonly Entry[][]) => enterRows(table.name, row, entries);
  const small = (queue: (desk: Desk) => void): Step => ({ bytes: 3 * CALL, queue });
  const format = (row: number, column: number, rows: number, code: string) =>
    small((desk) => {
      // A single format counts for all cells, which the declared type leaves out.
      at(desk, row, column, rows, 1).numberFormat = code as unknown as string[][];
    });
  const steps: Step[] = change.rename.map(({ column, heading }) =>
    small((desk) => {
      at(desk, 0, column, 1, 1).formulas = [[`'${heading}`]];
    }),
  );
  if (change.columns.length > 0) {
    const titles = change.columns.map(({ heading }): Entry => `'${heading}`);
    steps.push(
      small((desk) => {
        at(desk, 0, table.headings.length, 1, titles.length).formulas = [titles];
      }),
      ...change.columns.map((one, c) => format(1, table.headings.length + c, table.rows, one.format)),
    );
  }
  if (gone.size > 0) steps.push(...closeUp(table, change));
  else for (const { row, cells } of change.update) steps.push(...enter(row + 1, [cells.map(entryOver)]));
  if (change.append.length > 0) {
    const formats = [...table.formats, ...change.columns.map((one) => one.format)];
    steps.push(...formats.map((code, c) => format(left + 1, c, change.append.length, code)));
    steps.push(
      ...enter(
        left + 1,
        change.append.map((row) => row.map(entryNew)),
      ),
    );
  }
  // A table keeps one row, be it an empty one.
  const rows = Math.max(1, left + change.append.length);
  if (rows !== table.rows || change.columns.length > 0) {
    steps.push(
      small((desk) => {
        desk.workbook.tables.getItem(table.name).resize(at(desk, 0, 0, rows + 1, width));
      }),
    );
  }
  const freed = table.rows - left - change.append.length;
  if (freed > 0)
    steps.push(
      small((desk) => void at(desk, left + change.append.length + 1, 0, freed, width).clear("Contents")),
    );
  return steps;
}

/** Rows below those that go move up, with their formulas, from the first one that goes on. */
function closeUp({ name, entries }: StandingTable, { remove, update }: TableChange): Step[] {
  const gone = new Set(remove);
  const given = new Map(update.map(({ row, cells }) => [row, cells]));
  const first = Math.min(...entries.keys());
  const rows = [...entries]
    .filter(([row]) => !gone.has(row))
    .sort(([a], [b]) => a - b)
    .map(([row, cells]) =>
      cells.map((cell, c) => (given.get(row)?.[c] === undefined ? cell : entryOver(given.get(row)![c]))),
    );
  return enterRows(name, first + 1, rows);
}

/** Over what stands: `undefined` leaves it, `null` empties it. */
function entryOver(cell: TableCell | undefined): Entry {
  if (cell === undefined) return null;
  return cell === null ? "" : entryNew(cell);
}

/** Every text goes in behind an apostrophe, so that none is taken for a number or a formula. */
function entryNew(cell: TableCell): Entry {
  return typeof cell === "string" ? `'${cell}` : cell;
}
