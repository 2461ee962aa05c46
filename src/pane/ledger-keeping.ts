import { decide } from "../fitting/decide.ts";
import type { Session } from "../fitting/session.ts";
import type { Host, Run } from "../hosts/host.ts";
import { bringForward } from "../ledger/bring-forward.ts";
import type { Row, Table } from "../ledger/cell.ts";
import { ARCHIVE_READ, type KeepPlan, keepPlan } from "../ledger/keep-plan.ts";
import { type LedgerExtra, ledgerRows } from "../ledger/ledger-rows.ts";
import { removePlayer } from "../ledger/remove-player.ts";
import { LEDGER, SCHEMA_VERSION, type Schema, SHOTS } from "../ledger/schema.ts";
import { shotRows } from "../ledger/shot-rows.ts";
import { rowsOf } from "../ledger/table-rows.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { Taken } from "../sheets/free-names.ts";
import { headingKey } from "../sheets/heading-key.ts";

/** Where the workbook remembers which form its ledger is in. */
export const SCHEMA_KEY = "ledger-form";

/** Keeps a session in the workbook's ledger and its shots in the archive: both, or neither. */
export function keepSession(host: Host, session: Session, extra: LedgerExtra = {}, run: Run = {}) {
  return keepRows(host, ledgerRows(session, decide(session), extra), shotRows(session), run);
}

/** Keeps rows in the workbook's ledger, and shots in its archive, where they do not stand there yet. */
export async function keepRows(
  host: Host,
  rows: readonly Row[],
  shots: readonly Row[],
  run: Run = {},
): Promise<Outcome<KeepPlan>> {
  const ledger = await ledgerFor(host, rows);
  if (isProblem(ledger)) return ledger;
  const archive = await host.tableCells(SHOTS.table, ARCHIVE_READ.map(headingOfShots), {
    heading: headingOfShots(SHOTS.key),
    texts: shots.map(({ shotKey }) => String(shotKey)),
  });
  if (isProblem(archive)) return archive;
  const taken = ledger && archive ? NONE_NEEDED : await host.taken();
  if (isProblem(taken)) return taken;
  const plan = keepPlan(ledger, archive, rows, shots, taken);
  if (isProblem(plan)) return plan;
  const done = await host.changeTables(plan.changes, plan.create, run);
  if (isProblem(done)) return done;
  // The rows say their form themselves; this is for those who look into the workbook without reading them.
  await host.keep(SCHEMA_KEY, String(SCHEMA_VERSION));
  return plan;
}

/** Where both tables stand no sheet is added, so no name has to be found for one. */
const NONE_NEEDED: Taken = { sheets: [], names: [] };

const headingOf = (schema: Schema, key: string) => schema.columns.find((one) => one.key === key)!.heading;
const headingOfShots = (key: string) => headingOf(SHOTS, key);

/**
 * The ledger as far as keeping these rows takes it: the rows of theirs that stand there, the others empty. Where any row
 * may be of an older form all are read, for all are brought forward.
 */
async function ledgerFor(host: Host, rows: readonly Row[]): Promise<Outcome<Table | null>> {
  const heading = headingOf(LEDGER, "schema");
  const forms = await host.tableCells(LEDGER.table, [heading]);
  if (isProblem(forms) || !forms) return forms;
  const place = forms.headings.findIndex((one) => headingKey(one) === headingKey(heading));
  if (place < 0 || !forms.rows.every((row) => Number(row[place] ?? 1) >= SCHEMA_VERSION)) {
    return host.tableCells(LEDGER.table);
  }
  const texts = rows.map(({ entry }) => String(entry));
  return host.tableCells(LEDGER.table, undefined, { heading: headingOf(LEDGER, LEDGER.key), texts });
}

/** All rows of the workbook's ledger in today's form; none where it has no ledger. Nothing is written. */
export async function ledgerOf(host: Host): Promise<Outcome<Row[]>> {
  const ledger = await host.tableCells(LEDGER.table);
  if (isProblem(ledger)) return ledger;
  return ledger ? rowsOf(bringForward(ledger).table, LEDGER) : [];
}

/** Takes a player out of the ledger and the archive: out of both, or of neither. Answers how many rows went. */
export async function forgetPlayer(
  host: Host,
  player: string,
): Promise<Outcome<{ readonly entries: number; readonly shots: number }>> {
  const ledger = await host.tableCells(LEDGER.table);
  if (isProblem(ledger)) return ledger;
  if (!ledger) return { entries: 0, shots: 0 };
  const archive = await host.tableCells(SHOTS.table, [headingOfShots("session")]);
  if (isProblem(archive)) return archive;
  const removal = removePlayer(ledger, archive, player);
  const done = await host.changeTables(removal.changes, null);
  return isProblem(done) ? done : { entries: removal.entries, shots: removal.shots };
}
