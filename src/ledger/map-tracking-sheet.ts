import { specFromName } from "../fitting/build-spec.ts";
import { clubKindOf } from "../fitting/club-kind.ts";
import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import type { Row } from "./cell.ts";
import { readTrackingRow, type TrackingProblem } from "./read-tracking-row.ts";
import { SCHEMA_VERSION } from "./schema.ts";
import { stableHash } from "./stable-hash.ts";
import { type DayEvidence, type DayOrder, dayEvidence } from "./tracking-dates.ts";
import type { TrackingColumn } from "./tracking-heading.ts";
import { readTrackingTable } from "./tracking-table.ts";

export interface TrackingOptions {
  /** What the sheet is called, for the ledger's Source column. */
  readonly source?: string;
  /** Where the days themselves do not tell. */
  readonly days?: DayOrder;
  /** Columns that were taken for something else: ledger column keys by heading; null leaves one out. */
  readonly columns?: Readonly<Record<string, string | null>>;
}

/** What a tracking sheet became. Nothing in it is changed; nothing of it is dropped without being named. */
export interface MappedSheet {
  readonly rows: readonly Row[];
  /** One a line of the sheet that became something: what it was, what it is, what to know about it. */
  readonly preview: readonly { readonly line: number; readonly was: string; readonly rows: readonly Row[] }[];
  /** Lines and cells that did not become anything, and why. */
  readonly left: readonly TrackingProblem[];
  readonly columns: readonly TrackingColumn[];
  readonly days: DayEvidence;
  /** What has to be answered before all can be understood. */
  readonly questions: readonly string[];
}

/**
 * Maps somebody's own tracking sheet into ledger rows: as text that was copied or exported, or as cells. Titles above,
 * headings in one row or two, units in headings or cells, cells merged downwards, several builds in one line. Days in
 * local order are told by a day that fits one order only; where none does, they are left empty and it is asked.
 */
export function mapTrackingSheet(
  sheet: string | readonly (readonly string[])[],
  options: TrackingOptions = {},
): Outcome<MappedSheet> {
  const table = readTrackingTable(sheet, options.columns ?? {});
  if (isProblem(table)) return table;
  const { columns, lines, decimal } = table;
  const left: TrackingProblem[] = [...table.left];
  const dateColumn = columns.findIndex(({ key }) => key === "date");
  const days = dayEvidence(lines.flatMap(({ cells, day }) => [cells[dateColumn] ?? "", day ?? ""]));
  const order = options.days ?? days.order;
  const seen = new Map<string, number>();
  const source = `brought in: ${options.source ?? "tracking sheet"}`;
  const preview = lines.flatMap((line) => {
    const read = readTrackingRow(line, columns, { decimal, order });
    left.push(...read.problems);
    const rows = read.rows.map((facts) => finished(facts, source, seen));
    return rows.length === 0
      ? []
      : [{ line: line.line, was: line.cells.filter((cell) => cell !== "").join(" | "), rows }];
  });
  const rows = preview.flatMap((one) => one.rows);
  if (rows.length === 0) {
    return invalid(
      "No line of the sheet became a ledger row; a line needs a build and a figure or a verdict.",
    );
  }
  const unused = columns.filter(({ key, heading }) => key === null && heading !== "");
  return {
    rows,
    preview,
    left: [
      ...unused.map(({ heading }) => ({
        line: 0,
        cell: heading,
        why: "not a column of the ledger; its cells went into Note",
      })),
      ...left,
    ],
    columns,
    days,
    questions: days.question && !options.days ? [days.question] : [],
  };
}

/** What every ledger row has: its own name, the same whenever the same line is brought in again. */
function finished(facts: Row, source: string, seen: Map<string, number>): Row {
  const session = `t${stableHash(JSON.stringify([facts.player, facts.date, facts.club])).slice(1)}`;
  const told = JSON.stringify([session, Object.entries(facts).sort(([a], [b]) => (a < b ? -1 : 1))]);
  const again = (seen.get(told) ?? 0) + 1;
  seen.set(told, again);
  const spec = specFromName(String(facts.build ?? ""));
  return {
    schema: SCHEMA_VERSION,
    entry: `${session}-${stableHash(`${told}#${again}`).slice(0, 8)}`,
    session,
    ...facts,
    kind: clubKindOf(String(facts.club ?? "")),
    shaftWeight: facts.shaftWeight ?? spec.weight ?? null,
    profile: facts.profile ?? spec.profile ?? null,
    source,
  };
}
