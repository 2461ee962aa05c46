import { METRICS } from "../shots/metrics.ts";
import type { ColumnReading } from "../shots/shot-table.ts";

type ColumnKey = ColumnReading["key"];

/** What a column can be taken for, in words. */
export const COLUMN_CHOICES: readonly { readonly key: NonNullable<ColumnKey>; readonly label: string }[] = [
  { key: "build", label: "Build" },
  { key: "club", label: "Club" },
  { key: "shot", label: "Shot number" },
  { key: "time", label: "Time" },
  { key: "keep", label: "Keep (yes or no)" },
  ...METRICS.map(({ key, label }) => ({ key, label })),
];

const SPEEDS = ["mph", "m/s", "km/h"];
const LENGTHS = ["yd", "m", "ft"];

/**
 * Units that figures of a kind come in; none to choose from where there is but one.
 *
 * @param own the unit that the column has, which is always among them
 */
export function unitChoices(key: ColumnKey, own = ""): readonly string[] {
  const choices = usualChoices(key);
  return choices.length === 0 || own === "" || choices.includes(own) ? choices : [...choices, own];
}

function usualChoices(key: ColumnKey): readonly string[] {
  const unit = METRICS.find((metric) => metric.key === key)?.unit;
  if (unit === "mph") return SPEEDS;
  if (unit === "yd" || unit === "ft") return LENGTHS;
  if (unit === "mm") return ["mm", "in"];
  return [];
}
