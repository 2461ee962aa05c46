import { metricOf } from "./metrics.ts";
import { isMetricKey } from "./planned-column.ts";
import type { ShotTable } from "./shot-table.ts";

/** Says in plain sentences what was understood of a pasted table, for a person to agree with or to put right. */
export function describeReading(table: ShotTable): string[] {
  const builds = [...new Set(table.build)];
  const dropped = table.keep.filter((keep) => !keep).length;
  const sentences = [
    `${count(table.size, "shot")} of ${count(builds.length, "build")}: ${list(builds)}.`,
    ...(dropped > 0 ? [`${count(dropped, "shot")} marked as not to count.`] : []),
    `Columns: ${list(table.columns.filter(({ key }) => key !== null).map(columnWords))}.`,
  ];
  const kept = table.extras.map(({ header }) => `"${header}"`);
  if (kept.length > 0) sentences.push(`Not recognised and kept as they are: ${list(kept)}.`);
  sentences.push(...table.notes);
  const skipped = new Map<string, number[]>();
  for (const { row, reason } of table.skipped) {
    const kind = reason.replace(/: ".*$/s, "");
    skipped.set(kind, [...(skipped.get(kind) ?? []), row]);
  }
  for (const [reason, rows] of skipped) sentences.push(`Left out as ${reason}: ${rowsWords(rows)}.`);
  if (table.problems.length > 0) sentences.push(`To look at: ${count(table.problems.length, "cell")}.`);
  return sentences;
}

function columnWords({ header, key, unit, unitFrom }: ShotTable["columns"][number]): string {
  const name = isMetricKey(key) ? metricOf(key).label.toLowerCase() : key;
  const heading = header === "" ? "" : ` from "${header}"`;
  if (unit === "") return `${name}${heading}`;
  return `${name}${heading} in ${unit}${unitFrom === "assumed" ? " (not stated, taken as usual)" : ""}`;
}

function count(size: number, word: string): string {
  return `${size} ${word}${size === 1 ? "" : "s"}`;
}

function list(items: readonly (string | null)[]): string {
  if (items.length > 24) return `${items.slice(0, 20).join(", ")} and ${items.length - 20} more`;
  return items.length < 2 ? (items[0] ?? "none") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}

/** The rows in words, the first twelve by number. */
export function rowsWords(rows: readonly number[]): string {
  const shown = rows.slice(0, 12).join(", ");
  const more = rows.length > 12 ? ` and ${rows.length - 12} more` : "";
  return `${rows.length === 1 ? "row" : "rows"} ${shown}${more}`;
}
