import type { Source } from "./contradictions.ts";
import type { Gathered } from "./gathered.ts";
import type { MetricKey } from "./metrics.ts";
import { columnOf } from "./section.ts";
import type { Records } from "./split-text.ts";

/** Finds the cell that a shot's figure came from. */
export function sourceOf(text: Records, shots: Gathered): Source {
  const index = (key: MetricKey, shot: number) =>
    columnOf(shots.sections[shots.section[shot]!]!, key)?.index ?? -1;
  return {
    column: (key, shot) => index(key, shot) + 1,
    unit: (key, shot) => columnOf(shots.sections[shots.section[shot]!]!, key)?.unit ?? "",
    found: (key, shot) => text.cells[shots.record[shot]!]![index(key, shot)] ?? "",
  };
}
