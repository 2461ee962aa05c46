import { decide } from "../fitting/decide.ts";
import type { Session } from "../fitting/session.ts";
import type { Host, Run } from "../hosts/host.ts";
import { bringForward } from "../ledger/bring-forward.ts";
import type { Row, Table } from "../ledger/cell.ts";
import { type KeepPlan, keepPlan } from "../ledger/keep-plan.ts";
import { type LedgerExtra, ledgerRows } from "../ledger/ledger-rows.ts";
import { removePlayer } from "../ledger/remove-player.ts";
import { LEDGER, SCHEMA_VERSION, type Schema, SHOTS } from "../ledger/schema.ts";
import { sessionId } from "../ledger/session-id.ts";
import { shotRows } from "../ledger/shot-rows.ts";
import { rowsOf } from "../ledger/table-rows.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { Taken } from "../sheets/free-names.ts";
import { headingKey } from "../sheets/heading-key.ts";
import { unlessStopped } from "./unless-stopped.ts";

/** Where the workbook remembers which form its ledger is in. */
export const SCHEMA_KEY = "ledger-form";

/** What came of keeping a session, and what the ledger knows it by: to be given when it is kept again. */
export type KeptSession = KeepPlan & { readonly session: string };

/** What a session that was kept before is known by, and how many shots of it were archived. */
export interface KeptBefore {
  readonly session: string;
  readonly shots: number;
}

/**
 * Keeps a session in the workbook's ledger and its shots in the archive: both, or neither. A session that was kept
 * before stays the same one, however many shots have come to it: its rows are put right, new shots are added, builds
 * that it no longer has go. Archived shots go only where they were archived from here, as `before` tells.
 */
export async function keepSession(
  host: Host,
  session: Session,
  extra: LedgerExtra = {},
  before: KeptBefore | null | undefined = null,
  run: Run = {},
): Promise<Outcome<KeptSession>> {
  const id = before?.session ?? sessionId(session);
  const rows = ledgerRows(session, decide(session), { ...extra, session: id });
  const plan = await keepRows(host, rows, shotRows(session, id), {
    ...run,
    session: id,
    shots: before?.shots ?? 0,
  });
  return isProblem(plan) ? plan : { ...plan, session: id };
}

/** Which session all the rows are of, and how many shots of it may stand in the archive. */
interface Whole {
  readonly session?: string;
  readonly shots?: number;
}

/** Keeps rows in the workbook's ledger, and shots in its archive, where they do not stand there yet. */
export async function keepRows(
  host: Host,
  rows: readonly Row[],
  shots: readonly Row[],
  { session, shots: archived = 0, ...run }: Run & Whole = {},
): Promise<Outcome<KeepPlan>> {
  const keys = rows.map(({ entry }) => String(entry));
  const all = [...keys, ...beyond(session, rows.length, rows.length + MERGED)];
  const ledger = await unlessStopped(ledgerFor(host, all), run.signal);
  if (isProblem(ledger)) return ledger;
  const shotKeys = shots.map(({ shotKey }) => String(shotKey));
  const archive = await unlessStopped(
    standing(host, SHOTS, [...shotKeys, ...beyond(session, shots.length, archived)]),
    run.signal,
  );
  if (isProblem(archive)) return archive;
  const taken = ledger && archive ? NONE_NEEDED : await host.taken();
  if (isProblem(taken)) return taken;
  const plan = keepPlan(ledger, archive, rows, shots, taken, session ?? null);
  if (isProblem(plan)) return plan;
  const done = await host.changeTables(plan.changes, plan.create, run);
  if (isProblem(done)) return done;
  // The rows say their form themselves; this is for those who look into the workbook without reading them.
  await host.keep(SCHEMA_KEY, String(SCHEMA_VERSION));
  return plan;
}

/** So many builds of a session may have been merged into others since it was kept. */
const MERGED = 12;

/** Keys of rows that the session no longer has: those are counted from 1. */
const beyond = (session: string | undefined, from: number, to: number) =>
  session === undefined
    ? []
    : Array.from({ length: Math.max(0, to - from) }, (_, i) => `${session}-${from + i + 1}`);

/** Where both tables stand no sheet is added, so no name has to be found for one. */
const NONE_NEEDED: Taken = { sheets: [], names: [] };

const headingOf = (schema: Schema, key: string) => schema.columns.find((one) => one.key === key)!.heading;

/**
 * The ledger as far as keeping rows of these keys takes it: those that stand there, the others empty. Where any row may
 * be of an older form all are read, for all are brought forward.
 */
async function ledgerFor(host: Host, keys: readonly string[]): Promise<Outcome<Table | null>> {
  const heading = headingOf(LEDGER, "schema");
  const forms = await host.tableCells(LEDGER.table, [heading]);
  if (isProblem(forms) || !forms) return forms;
  const place = forms.headings.findIndex((one) => headingKey(one) === headingKey(heading));
  const old = place < 0 || !forms.rows.every((row) => Number(row[place] ?? 1) >= SCHEMA_VERSION);
  return old ? host.tableCells(LEDGER.table) : standing(host, LEDGER, keys);
}

/** A table with the rows of these keys, the others empty; all of a table of one row, which may be a blank one. */
async function standing(
  host: Host,
  schema: Schema,
  texts: readonly string[],
): Promise<Outcome<Table | null>> {
  const found = await host.tableCells(schema.table, undefined, {
    heading: headingOf(schema, schema.key),
    texts,
  });
  if (isProblem(found) || found?.rows.length !== 1) return found;
  return host.tableCells(schema.table);
}

/** All rows of the workbook's ledger in today's form; none where it has none. Nothing is written. */
export async function ledgerOf(host: Host): Promise<Outcome<Row[]>> {
  const ledger = await host.tableCells(LEDGER.table);
  if (isProblem(ledger)) return ledger;
  if (!ledger) return [];
  // A table keeps a blank row when all others have gone, and people leave some as well.
  return rowsOf(bringForward(ledger).table, LEDGER).filter((row) => (row.entry ?? null) !== null);
}

/** Takes a player out of the ledger and the archive: out of both, or of neither. Answers how many rows went. */
export async function forgetPlayer(
  host: Host,
  player: string,
  run: Run = {},
): Promise<Outcome<{ readonly entries: number; readonly shots: number }>> {
  const ledger = await unlessStopped(host.tableCells(LEDGER.table), run.signal);
  if (isProblem(ledger)) return ledger;
  if (!ledger) return { entries: 0, shots: 0 };
  const archive = await unlessStopped(
    host.tableCells(SHOTS.table, [headingOf(SHOTS, "session")]),
    run.signal,
  );
  if (isProblem(archive)) return archive;
  const removal = removePlayer(ledger, archive, player);
  const done = await host.changeTables(removal.changes, null, run);
  return isProblem(done) ? done : { entries: removal.entries, shots: removal.shots };
}
