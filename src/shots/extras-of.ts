import type { Gathered } from "./gathered.ts";
import type { ExtraColumn } from "./shot-table.ts";
import type { Records } from "./split-text.ts";

/** Unknown columns, all cells as text. One that holds nothing at all is only a gap. */
export function extrasOf(text: Records, shots: Gathered): ExtraColumn[] {
  const extras = new Map<string, { header: string; cells: string[] }>();
  shots.sections.forEach((section, place) => {
    for (const { index, key, header } of section.columns) {
      if (key !== null) continue;
      const name = `${index}\n${header}`;
      const extra = extras.get(name) ?? { header: header || `Column ${index + 1}`, cells: [] };
      if (extra.cells.length === 0) extra.cells = new Array<string>(shots.size).fill("");
      extras.set(name, extra);
      for (let shot = 0; shot < shots.size; shot++) {
        if (shots.section[shot] === place)
          extra.cells[shot] = text.cells[shots.record[shot]!]![index]?.trim() ?? "";
      }
    }
  });
  return [...extras.entries()]
    .filter(([name, { cells }]) => !name.endsWith("\n") || cells.some((cell) => cell !== ""))
    .map(([, extra]) => extra);
}
