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
  /** Key of the build that the session chose, or else of the one ordered; empty where there is neither. */
  readonly chosen: string;
}

/** What a verdict says that names no build. */
export const TOO_CLOSE = "too close to call";

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
    const chosen = chosenRow(own) ?? orderedRow(own);
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
export const buildKey = (row: Row) => keyOf(textIn(row, "build"));

const keyOf = (name: string) => name.toLowerCase().replace(/\s+/g, " ");

/** The row of the build that a session's verdict names. Older ledgers marked the first of those too close to call. */
export const chosenRow = (rows: readonly Row[]): Row | undefined =>
  rows.find((row) => row.chosen === true && textIn(row, "verdict") !== TOO_CLOSE);

/** The row of the build that was ordered: the one that the order names, for some write it beside every build. */
export function orderedRow(rows: readonly Row[]): Row | undefined {
  const ordered = rows.filter((row) => textIn(row, "ordered") !== "");
  return ordered.find((row) => keyOf(textIn(row, "ordered")) === buildKey(row)) ?? ordered[0];
}
