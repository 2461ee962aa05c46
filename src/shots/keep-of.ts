import type { Gathered } from "./gathered.ts";
import { readKeepColumn } from "./keep-column.ts";
import { columnOf } from "./section.ts";
import type { TableProblem } from "./shot-table.ts";
import type { Records } from "./split-text.ts";

/** Which shots count, by the column that says so; all where there is none. */
export function keepOf(text: Records, shots: Gathered, rows: readonly number[]) {
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
