import { enterRows, tableArea } from "./enter-rows.ts";
import { runsOf } from "./runs-of.ts";
import type { StandingTable } from "./standing-table.ts";
import { CALL, type Desk, type Step } from "./step.ts";

/** What puts a table back as it stood. */
export function restoreSteps({ name, headings, rows, entries, grows, renamed }: StandingTable): Step[] {
  const width = headings.length;
  const small = (queue: (desk: Desk) => void): Step => ({ bytes: 4 * CALL, queue });
  const clear = (row: number, column: number, height: number, across: number) =>
    small((desk) => void tableArea(desk, name, row, column, height, across).clear());
  return [
    small((desk) => {
      desk.workbook.tables.getItem(name).resize(tableArea(desk, name, 0, 0, rows + 1, width));
    }),
    ...(grows.rows > 0 ? [clear(rows + 1, 0, grows.rows, width + grows.columns)] : []),
    ...(grows.columns > 0 ? [clear(0, width, rows + 1, grows.columns)] : []),
    ...(renamed ? enterRows(name, 0, [headings.map((heading) => `'${heading}`)]) : []),
    ...runsOf([...entries.keys()].sort((a, b) => a - b)).flatMap(([row, count]) =>
      enterRows(
        name,
        row + 1,
        Array.from({ length: count }, (_, i) => entries.get(row + i)!),
      ),
    ),
  ];
}
