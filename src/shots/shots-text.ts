import { metricOf } from "./metrics.ts";
import type { ShotTable } from "./shot-table.ts";

/**
 * Some shots of a table as a text that `readShots` reads back to the same figures: builds, clubs, numbers, times and
 * every metric in the units kept inside. Columns that were not recognised stay behind.
 *
 * @param shots places in the table, counted from 0
 */
export function shotsText(table: ShotTable, shots: readonly number[]): string {
  const columns: { readonly heading: string; readonly cell: (shot: number) => string }[] = [
    { heading: "Build", cell: (shot) => plain(table.build[shot]!) },
  ];
  const names = [
    ["Club", table.club],
    ["Shot", table.shot],
    ["Time", table.time],
  ] as const;
  for (const [heading, cells] of names) {
    if (shots.some((shot) => cells[shot] !== "")) columns.push({ heading, cell: (at) => plain(cells[at]!) });
  }
  if (shots.some((shot) => !table.keep[shot]))
    columns.push({ heading: "Keep", cell: (shot) => (table.keep[shot] ? "yes" : "no") });
  for (const [key, values] of table.values) {
    const { label, unit } = metricOf(key);
    const cell = (shot: number) => (Number.isNaN(values[shot]!) ? "" : String(values[shot]!));
    columns.push({ heading: unit ? `${label} (${unit})` : label, cell });
  }
  const lines = shots.map((shot) => columns.map(({ cell }) => cell(shot)).join("\t"));
  return [columns.map(({ heading }) => heading).join("\t"), ...lines].join("\n");
}

/** A name on one line, without what would part cells. */
function plain(name: string): string {
  return name.replace(/[\t\n\r]+/g, " ");
}
