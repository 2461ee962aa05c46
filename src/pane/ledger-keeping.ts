import { decide } from "../fitting/decide.ts";
import type { Session } from "../fitting/session.ts";
import type { Host, Run } from "../hosts/host.ts";
import { bringForward } from "../ledger/bring-forward.ts";
import type { Row } from "../ledger/cell.ts";
import { ARCHIVE_READ, type KeepPlan, keepPlan } from "../ledger/keep-plan.ts";
import { type LedgerExtra, ledgerRows } from "../ledger/ledger-rows.ts";
import { removePlayer } from "../ledger/remove-player.ts";
import { LEDGER, SCHEMA_VERSION, SHOTS } from "../ledger/schema.ts";
import { shotRows } from "../ledger/shot-rows.ts";
import { rowsOf } from "../ledger/table-rows.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";

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
  const ledger = await host.tableCells(LEDGER.table);
  if (isProblem(ledger)) return ledger;
  const archive = await host.tableCells(SHOTS.table, shots.length === 0 ? [] : headingsOfArchive);
  if (isProblem(archive)) return archive;
  const taken = await host.taken();
  if (isProblem(taken)) return taken;
  const plan = keepPlan(ledger, archive, rows, shots, taken);
  if (isProblem(plan)) return plan;
  const done = await host.changeTables(plan.changes, plan.create, run);
  if (isProblem(done)) return done;
  // The rows say their form themselves; this is for those who look into the workbook without reading them.
  await host.keep(SCHEMA_KEY, String(SCHEMA_VERSION));
  return plan;
}

const headingsOfArchive = ARCHIVE_READ.map(
  (key) => SHOTS.columns.find((column) => column.key === key)!.heading,
);

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
  const session = SHOTS.columns.find(({ key }) => key === "session")!.heading;
  const archive = await host.tableCells(SHOTS.table, [session]);
  if (isProblem(archive)) return archive;
  const removal = removePlayer(ledger, archive, player);
  const done = await host.changeTables(removal.changes, null);
  return isProblem(done) ? done : { entries: removal.entries, shots: removal.shots };
}
