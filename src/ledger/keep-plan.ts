import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { freeSheetName, type Taken } from "../sheets/free-names.ts";
import { headingKey } from "../sheets/heading-key.ts";
import type { SheetPlan, WorkbookPlan } from "../sheets/plan.ts";
import { changedTable, isIdle, type TableChange } from "../sheets/table-change.ts";
import { bringForward } from "./bring-forward.ts";
import type { Row, Table } from "./cell.ts";
import { changeBetween } from "./change-between.ts";
import { knownEntries } from "./known-entries.ts";
import { type Merged, mergeRows } from "./merge-rows.ts";
import { LEDGER, type Schema, SHOTS } from "./schema.ts";
import { tableSheet } from "./table-sheet.ts";

/** What is to happen to a workbook so that it keeps these rows, and what that comes to. */
export interface KeepPlan {
  readonly changes: readonly TableChange[];
  /** Sheets for tables that the workbook does not have yet. */
  readonly create: WorkbookPlan | null;
  /** Ledger rows: new ones, those that stood there, those that were put right. */
  readonly added: number;
  readonly already: number;
  readonly updated: number;
  /** Rows that went, for the session has their builds no more. */
  readonly removed: number;
  readonly shotsAdded: number;
  readonly shotsUpdated: number;
  readonly shotsRemoved: number;
  /** What bringing an older ledger forward did, a sentence each. */
  readonly forward: readonly string[];
}

/**
 * Keeps rows in a workbook: an older ledger is brought forward, new rows are appended, others put right, and tables
 * that are missing get a sheet each. `whole` names a session of which all rows and shots are given, so that those which
 * it no longer has go; null where the rows are of no one session.
 */
export function keepPlan(
  ledger: Table | null,
  shots: Table | null,
  rows: readonly Row[],
  archive: readonly Row[],
  taken: Taken,
  whole: string | null = null,
): Outcome<KeepPlan> {
  const changes: TableChange[] = [];
  const sheets: SheetPlan[] = [];
  const used = [...taken.sheets];
  const create = (schema: Schema, all: readonly Row[], lean: boolean) => {
    const name = freeSheetName(schema.sheet, used);
    used.push(name);
    if (all.length > 0) sheets.push(tableSheet(schema, all, name, lean));
  };
  let entries = { added: rows.length, already: 0, updated: 0, removed: 0 };
  let forward: readonly string[] = [];
  if (ledger) {
    const brought = bringForward(ledger);
    const strange = notOurs(brought.table, LEDGER);
    if (strange) return strange;
    const known = whole === null ? rows : knownEntries(rows, brought.table, whole);
    const merged = mergeRows(brought.table, known, LEDGER, whole);
    changes.push(
      brought.changes.length > 0 ? broughtAndMerged(ledger, brought.table, merged) : merged.change,
    );
    entries = merged;
    forward = brought.changes;
  } else create(LEDGER, rows, false);
  let shotsIn = { added: archive.length, updated: 0, removed: 0 };
  if (shots) {
    const strange = notOurs(shots, SHOTS);
    if (strange) return strange;
    const merged = mergeRows(shots, archive, SHOTS, whole);
    changes.push(merged.change);
    shotsIn = merged;
  } else create(SHOTS, archive, true);
  const first = sheets[0];
  return {
    changes: changes.filter((change) => !isIdle(change)),
    create: first ? { sheets, names: [], active: first.name } : null,
    added: entries.added,
    already: entries.already,
    updated: entries.updated,
    removed: entries.removed,
    shotsAdded: shotsIn.added,
    shotsUpdated: shotsIn.updated,
    shotsRemoved: shotsIn.removed,
    forward,
  };
}

/** From the older form to the rows that are to stand there: what goes is counted in rows of the table as it is. */
function broughtAndMerged(before: Table, brought: Table, { change }: Merged): TableChange {
  const { remove } = change;
  return { ...changeBetween(before, changedTable(brought, { ...change, remove: [] })), remove };
}

/** A table of the user's that happens to be called as ours is. */
function notOurs(table: Table, schema: Schema) {
  const key = schema.columns.find((column) => column.key === schema.key)!.heading;
  if (table.headings.some((heading) => headingKey(heading) === headingKey(key))) return null;
  return invalid(
    `The workbook has a table "${schema.table}" without a column "${key}", so it is not the ledger's; rename it and try again.`,
  );
}

/** One sentence for the pane: what was added, and what stood there already. */
export function keepWords(plan: Outcome<KeepPlan>): string {
  if (isProblem(plan)) return plan.message;
  const { added, already, updated, removed, shotsAdded, shotsUpdated, shotsRemoved, forward } = plan;
  const builds = (count: number) => counted(count, "build");
  const shots = (count: number) => (count > 0 ? [counted(count, "shot")] : []);
  const grown = [...(added > 0 ? [builds(added)] : []), ...shots(shotsAdded)];
  const shrunk = [...(removed > 0 ? [builds(removed)] : []), ...shots(shotsRemoved)];
  const right = [...(updated > 0 ? [builds(updated)] : []), ...shots(shotsUpdated)];
  const parts = [
    grown.length > 0 ? `${grown.join(" and ")} added to the ledger` : "",
    right.length > 0 ? `${right.join(" and ")} put right` : "",
    shrunk.length > 0 ? `${shrunk.join(" and ")} that it no longer has taken out` : "",
    already > 0 ? `${builds(already)} stood there already` : "",
  ].filter((part) => part !== "");
  const said = parts.length === 0 ? "Nothing to keep." : `${parts.join("; ")}.`;
  return [said[0]!.toUpperCase() + said.slice(1), ...forward].join(" ");
}

const counted = (count: number, what: string) => `${count} ${what}${count === 1 ? "" : "s"}`;
