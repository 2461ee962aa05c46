import { longLedgerInPage } from "./long-ledger-in-page.ts";
import { millionSessions } from "./million-sessions.ts";
import type { BenchLine } from "./run.ts";

/** A chain's million sessions, and a shop's workbook after years. `PAGE=no` leaves the second out. */
export async function* bench(): AsyncGenerator<BenchLine> {
  yield* millionSessions();
  if (process.env.PAGE !== "no") yield* longLedgerInPage();
}
