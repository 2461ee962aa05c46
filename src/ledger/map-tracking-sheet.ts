import { specFromName } from "../fitting/build-spec.ts";
import { clubKindOf } from "../fitting/club-kind.ts";
import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import type { Row } from "./cell.ts";
import { plainKey } from "./plain-key.ts";
import { playerKey } from "./player-key.ts";
import { buildIn, readTrackingRow, type TrackingProblem, type TrackingReading } from "./read-tracking-row.ts";
import { SCHEMA_VERSION } from "./schema.ts";
import { stableHash } from "./stable-hash.ts";
import { type DayOrder, dayEvidence } from "./tracking-dates.ts";
import type { TrackingColumn } from "./tracking-heading.ts";
import { readTrackingTable } from "./tracking-table.ts";

export interface TrackingOptions {
  /** What the sheet is called, for the ledger's Source column. */
  readonly source?: string;
  /** Where the days themselves do not tell. */
  readonly days?: DayOrder;
  /** What figures are in that nobody stated a unit of; yards, miles an hour and inches where it is left out. */
  readonly units?: UnitSet;
  /** Columns that were taken for something else: one of TRACKING_KEYS by heading; null puts one into notes. */
  readonly columns?: Readonly<Record<string, string | null>>;
}

/** What a tracking sheet became. Nothing in it is changed; nothing of it is dropped without being named. */
export interface MappedSheet {
  readonly rows: readonly Row[];
  /** One a line of the sheet that became something: what it said, and the rows it became. */
  readonly preview: readonly { readonly line: number; readonly was: string; readonly rows: readonly Row[] }[];
  /** Lines and cells that did not become anything, and why. */
  readonly left: readonly TrackingProblem[];
  /** What was taken for granted, a sentence for each column. */
  readonly assumed: readonly string[];
  readonly columns: readonly TrackingColumn[];
  /** What has to be answered before all can be understood. */
  readonly questions: readonly string[];
}

/**
 * Maps somebody's own tracking sheet, copied or exported as text, into ledger rows. Titles above, headings in one row or
 * two, units in headings or cells, cells merged downwards, several builds in one line. Days in local order are told by a
 * day that fits one order only; where none does, they are left empty and it is asked.
 *
 * A row is known again by its player, day, club and build, and by its place among the lines that have all four alike. So
 * a line whose figures, verdict or notes were changed is put right when the sheet is brought in once more; one whose
 * player, day, club or build was changed is a new row, and the old one stays until it is deleted. Where the sheet says
 * something the ledger takes it over; where its cell is empty, what stands in the ledger stays.
 */
export function mapTrackingSheet(text: string, options: TrackingOptions = {}): Outcome<MappedSheet> {
  const table = readTrackingTable(text, options.columns ?? {});
  if (isProblem(table)) return table;
  const { columns, lines, decimal } = table;
  const left: TrackingProblem[] = [...table.left];
  const dateColumn = columns.findIndex(({ key }) => key === "date");
  const days = dayEvidence(lines.flatMap(({ cells, day }) => [cells[dateColumn] ?? "", day ?? ""]));
  const order = options.days ?? days.order;
  const blocks = [...new Set(columns.map(({ block }) => block))];
  const builds = lines.flatMap((line) => blocks.flatMap((block) => buildIn(line, columns, block) ?? []));
  const assumed = new Map<string, string>();
  const reading: TrackingReading = {
    decimal,
    order,
    units: options.units ?? "us",
    builds: [...new Set(builds)],
    assumed: ({ heading }, unit) => assumed.set(heading, unit),
  };
  const seen = new Map<string, number>();
  const source = `brought in: ${options.source?.trim() || "tracking sheet"}`;
  const preview = lines.flatMap((line) => {
    const read = readTrackingRow(line, columns, reading);
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
      ...unused.map(({ heading, twin }) => ({
        line: 0,
        cell: heading,
        why: `${twin === undefined ? "not a column of the ledger" : `holds what "${twin}" does`}; its cells went into Note`,
      })),
      ...left,
    ],
    assumed: [...assumed].map(
      ([heading, unit]) => `"${heading}" states no unit; its figures were taken to be in ${unit}.`,
    ),
    columns,
    questions: days.question && !options.days ? [days.question] : [],
  };
}

/** What every ledger row has: its own name, the same whenever the same line is brought in again. */
function finished(facts: Row, source: string, seen: Map<string, number>): Row {
  const key = (cell: Row[string] | undefined) => plainKey(String(cell ?? ""));
  const who = [playerKey(String(facts.player ?? "")), facts.date ?? "", key(facts.club)];
  const session = `t${stableHash(JSON.stringify(who)).slice(1)}`;
  const told = `${session} ${key(facts.build)}`;
  const again = (seen.get(told) ?? 0) + 1;
  seen.set(told, again);
  const spec = specFromName(String(facts.build ?? ""));
  const kind = clubKindOf(String(facts.club ?? ""));
  return {
    schema: SCHEMA_VERSION,
    entry: `${session}-${stableHash(`${told}#${again}`).slice(0, 8)}`,
    session,
    ...(spec.weight === undefined ? {} : { shaftWeight: spec.weight }),
    ...(spec.profile ? { profile: spec.profile } : {}),
    ...(kind === null ? {} : { kind }),
    ...facts,
    source,
  };
}
