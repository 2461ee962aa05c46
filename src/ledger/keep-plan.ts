import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { freeSheetName, type Taken } from "../sheets/free-names.ts";
import { headingKey } from "../sheets/heading-key.ts";
import type { SheetPlan, WorkbookPlan } from "../sheets/plan.ts";
import { isIdle, type TableChange } from "../sheets/table-change.ts";
import { bringForward } from "./bring-forward.ts";
import type { Row, Table } from "./cell.ts";
import { changeBetween } from "./change-between.ts";
import { mergeRows } from "./merge-rows.ts";
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
  readonly shotsAdded: number;
  /** What bringing an older ledger forward did, a sentence each. */
  readonly forward: readonly string[];
}

/** Columns of the archive that its rows are told apart by and that may change afterwards. */
export const ARCHIVE_READ = ["shotKey", "build", "keep"] as const;

/**
 * Keeps rows in a workbook: an older ledger is brought forward, new rows are appended, others put right, and tables
 * that are missing get a sheet each. `shots` may hold the columns of ARCHIVE_READ alone.
 */
export function keepPlan(
  ledger: Table | null,
  shots: Table | null,
  rows: readonly Row[],
  archive: readonly Row[],
  taken: Taken,
): Outcome<KeepPlan> {
  const changes: TableChange[] = [];
  const sheets: SheetPlan[] = [];
  const used = [...taken.sheets];
  const create = (schema: Schema, all: readonly Row[], lean: boolean) => {
    const name = freeSheetName(schema.sheet, used);
    used.push(name);
    if (all.length > 0) sheets.push(tableSheet(schema, all, name, lean));
  };
  let counted = { added: rows.length, already: 0, updated: 0 };
  let forward: readonly string[] = [];
  if (ledger) {
    const brought = bringForward(ledger);
    const strange = notOurs(brought.table, LEDGER);
    if (strange) return strange;
    const merged = mergeRows(brought.table, rows, LEDGER);
    changes.push(brought.changes.length > 0 ? changeBetween(ledger, merged.table) : merged.change);
    counted = merged;
    forward = brought.changes;
  } else create(LEDGER, rows, false);
  let shotsAdded = archive.length;
  if (shots) {
    const strange = notOurs(shots, SHOTS);
    if (strange) return strange;
    const merged = mergeRows(shots, archive, SHOTS, ARCHIVE_READ);
    changes.push(merged.change);
    shotsAdded = merged.added;
  } else create(SHOTS, archive, true);
  const first = sheets[0];
  return {
    changes: changes.filter((change) => !isIdle(change)),
    create: first ? { sheets, names: [], active: first.name } : null,
    added: counted.added,
    already: counted.already,
    updated: counted.updated,
    shotsAdded,
    forward,
  };
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
  const { added, already, updated, shotsAdded, forward } = plan;
  const builds = (count: number) => `${count} build${count === 1 ? "" : "s"}`;
  const parts = [
    added > 0 ? `${builds(added)} and ${shotsAdded} shots added to the ledger` : "",
    updated > 0 ? `${builds(updated)} put right` : "",
    already > 0 ? `${builds(already)} stood there already` : "",
  ].filter((part) => part !== "");
  const said = parts.length === 0 ? "Nothing to keep." : `${parts.join("; ")}.`;
  return [said[0]!.toUpperCase() + said.slice(1), ...forward].join(" ");
}
