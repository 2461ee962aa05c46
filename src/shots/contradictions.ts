import { type MetricKey, metricOf } from "./metrics.ts";
import type { ShotTable, TableProblem } from "./shot-table.ts";
import { showingIn } from "./showing.ts";

/** Where a figure stood in the pasted text, so that a finding can point at it. */
export interface Source {
  /** Counted from 1; 0 where the table has no such column. */
  readonly column: (key: MetricKey, shot: number) => number;
  /** The unit its figures came in; empty where there is none. */
  readonly unit: (key: MetricKey, shot: number) => string;
  /** The cell as it was pasted. */
  readonly found: (key: MetricKey, shot: number) => string;
}

type Finding = (key: MetricKey, shot: number, sentence: string) => void;
type Columns = ShotTable["values"];

/**
 * Finds figures that contradict each other or that no golf shot has, and says so without touching them:
 *
 * - smash factor more than 2 % off ball speed / club speed
 * - face to path more than 0.2 degrees off face angle less club path; three figures rounded to one decimal can be
 *   0.15 apart
 * - carry beyond total by more than their rounding
 * - spin rate more than 2 % off the root of backspin squared and sidespin squared
 * - anything outside `least` to `most` of METRICS, such as a ball speed of 900 mph
 */
export function contradictions(values: Columns, rows: readonly number[], source: Source): TableProblem[] {
  const problems: TableProblem[] = [];
  const tell: Finding = (key, shot, sentence) => {
    const row = rows[shot]!;
    const column = source.column(key, shot);
    const found = source.found(key, shot).trim();
    const message = `Row ${row}, column ${column} (${metricOf(key).label}): found "${found}"; ${sentence}`;
    problems.push({ row, column, found, message });
  };
  outOfRange(values, tell, source);
  smashOff(values, tell);
  faceToPathOff(values, tell);
  carryBeyondTotal(values, tell, source);
  spinOff(values, tell);
  return problems;
}

function outOfRange(values: Columns, tell: Finding, source: Source): void {
  for (const [key, column] of values) {
    const metric = metricOf(key);
    for (let shot = 0; shot < column.length; shot++) {
      if (!(column[shot]! < metric.least || column[shot]! > metric.most)) continue;
      const unit = source.unit(key, shot) || metric.unit;
      const shown = showingIn(metric, unit);
      const [least, most] = [shown(metric.least), shown(metric.most)].map((bound) =>
        Number(bound.toFixed(1)),
      );
      tell(key, shot, `a shot has ${least} to ${most}${unit && ` ${unit}`}. It is left as it is.`);
    }
  }
}

function smashOff(values: Columns, tell: Finding): void {
  const smash = values.get("smash");
  const ball = values.get("ballSpeed");
  const club = values.get("clubSpeed");
  if (!smash || !ball || !club) return;
  for (let shot = 0; shot < smash.length; shot++) {
    const ratio = ball[shot]! / club[shot]!;
    if (!(Math.abs(smash[shot]! - ratio) > 0.02 * ratio + SLACK)) continue;
    tell("smash", shot, `ball speed over club speed is ${ratio.toFixed(2)}. All three are left as they are.`);
  }
}

function faceToPathOff(values: Columns, tell: Finding): void {
  const between = values.get("faceToPath");
  const face = values.get("face");
  const path = values.get("path");
  if (!between || !face || !path) return;
  for (let shot = 0; shot < between.length; shot++) {
    const less = face[shot]! - path[shot]!;
    if (!(Math.abs(between[shot]! - less) > 0.2 + SLACK)) continue;
    tell(
      "faceToPath",
      shot,
      `face angle less club path is ${less.toFixed(1)} degrees. All three are left as they are.`,
    );
  }
}

function carryBeyondTotal(values: Columns, tell: Finding, source: Source): void {
  const carry = values.get("carry");
  const total = values.get("total");
  if (!carry || !total) return;
  for (let shot = 0; shot < carry.length; shot++) {
    if (!(carry[shot]! > total[shot]!)) continue;
    const rounding = halfStep(source.found("carry", shot)) + halfStep(source.found("total", shot));
    if (carry[shot]! - total[shot]! <= rounding * METRE_IN_YARDS + SLACK) continue;
    const unit = source.unit("total", shot) || "yd";
    const shown = showingIn(metricOf("total"), unit)(total[shot]!);
    tell("carry", shot, `the total is only ${shown.toFixed(1)} ${unit}. Both are left as they are.`);
  }
}

function spinOff(values: Columns, tell: Finding): void {
  const spin = values.get("spin");
  const back = values.get("backspin");
  const side = values.get("sidespin");
  if (!spin || !back || !side) return;
  for (let shot = 0; shot < spin.length; shot++) {
    const both = Math.hypot(back[shot]!, side[shot]!);
    if (!(Math.abs(spin[shot]! - both) > 0.02 * both + 1)) continue;
    tell(
      "spin",
      shot,
      `backspin and sidespin together make ${both.toFixed(0)} rpm. All three are left as they are.`,
    );
  }
}

/** Keeps the last digits of double precision from deciding what lies right on a limit. */
const SLACK = 1e-9;

/** A distance may have come in metres; the rounding is then that much more in yards. */
const METRE_IN_YARDS = 1 / 0.9144;

/** Half of the last place that a cell shows: what rounding may have moved it by. */
function halfStep(cell: string): number {
  const decimals = /[.,](\d+)\D*$/.exec(cell)?.[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals;
}
