import { type Row, textIn } from "./cell.ts";
import { playerKey } from "./player-key.ts";

/** The rows of one session together. */
export interface LedgerSession {
  readonly id: string;
  readonly player: string;
  readonly date: string;
  readonly kind: string;
  readonly verdict: string;
  readonly rows: readonly Row[];
  /** Key of the build that the session chose; empty where it chose none. */
  readonly chosen: string;
}

/** Ledger rows by session, the earliest first; those without a day come first of all. */
export function sessionsOf(rows: readonly Row[]): LedgerSession[] {
  const byId = new Map<string, Row[]>();
  for (const row of rows) {
    const id = textIn(row, "session") || textIn(row, "entry");
    const own = byId.get(id);
    if (own) own.push(row);
    else byId.set(id, [row]);
  }
  const sessions = [...byId].map(([id, own]): LedgerSession => {
    const chosen = own.find((row) => row.chosen === true) ?? own.find((row) => textIn(row, "ordered") !== "");
    return {
      id,
      player: playerKey(textIn(own[0]!, "player")),
      date: textIn(own[0]!, "date"),
      kind: textIn(own[0]!, "kind"),
      verdict: textIn(own[0]!, "verdict"),
      rows: own,
      chosen: chosen ? buildKey(chosen) : "",
    };
  });
  return sessions.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

/** A build by its name, whatever its case and blanks. */
export const buildKey = (row: Row) => textIn(row, "build").toLowerCase().replace(/\s+/g, " ");
