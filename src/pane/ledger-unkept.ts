import type { Session } from "../fitting/session.ts";
import { figureIn, type Row } from "../ledger/cell.ts";
import { sessionId } from "../ledger/session-id.ts";

/** What of the session on the desk is not in the ledger, so that looking back leaves it out; empty where all of it is. */
export function unkeptWords(
  rows: readonly Row[],
  session: Session | null,
  known: string | undefined,
): string {
  if (!session) return "";
  const id = known ?? sessionId(session);
  const own = rows.filter((row) => row.session === id);
  if (own.length === 0)
    return "The session that is open here is not in the ledger yet, so it is left out; keep it first.";
  const kept = own.reduce((sum, row) => sum + (figureIn(row, "shots") ?? 0), 0);
  return kept === session.table.size
    ? ""
    : `The session that is open here counts with the ${kept} shots it had when it was kept; keep it again for all ${session.table.size}.`;
}
