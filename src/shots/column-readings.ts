import type { Gathered } from "./gathered.ts";
import type { ColumnReading } from "./shot-table.ts";

/** What every column was taken for; those of a later header follow where they differ. */
export function columnReadings(shots: Gathered): ColumnReading[] {
  const seen = new Set<string>();
  return shots.sections.flatMap((section) =>
    section.columns.flatMap(({ index, header, key, unit, unitFrom }) => {
      const name = `${index}\n${header}`;
      if (seen.has(name)) return [];
      seen.add(name);
      return [{ column: index + 1, header, key, unit, unitFrom }];
    }),
  );
}
