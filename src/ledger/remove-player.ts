import { headingKey } from "../sheets/heading-key.ts";
import type { TableChange } from "../sheets/table-change.ts";
import type { Table } from "./cell.ts";
import { playerKey } from "./player-key.ts";
import { LEDGER, type Schema, SHOTS } from "./schema.ts";

/** What takes a player out of the ledger and the archive. */
export interface Removal {
  readonly changes: readonly TableChange[];
  readonly entries: number;
  readonly shots: number;
}

/**
 * Takes a player's rows out of the ledger and the shots of their sessions out of the archive. Names count as the same
 * whatever their case, accents and blanks. A session that another player's row names too keeps its shots.
 */
export function removePlayer(ledger: Table, shots: Table | null, player: string): Removal {
  const wanted = playerKey(player);
  const names = columnOf(ledger, LEDGER, "player");
  const ids = columnOf(ledger, LEDGER, "session");
  const theirs: number[] = [];
  const sessions = new Set<string>();
  const others = new Set<string>();
  for (const [place, row] of ledger.rows.entries()) {
    const session = String(row[ids] ?? "");
    if (wanted !== "" && playerKey(String(row[names] ?? "")) === wanted) {
      theirs.push(place);
      if (session !== "") sessions.add(session);
    } else others.add(session);
  }
  for (const session of others) sessions.delete(session);
  const of = shots ? columnOf(shots, SHOTS, "session") : -1;
  const gone = (shots?.rows ?? []).flatMap((row, place) => (sessions.has(String(row[of])) ? [place] : []));
  const removing = (table: string, { headings, rows }: Table, remove: number[]): TableChange[] => {
    const expected = { headings, rows: rows.length };
    return remove.length === 0
      ? []
      : [{ table, expected, rename: [], columns: [], update: [], append: [], remove }];
  };
  return {
    changes: [
      ...removing(LEDGER.table, ledger, theirs),
      ...(shots ? removing(SHOTS.table, shots, gone) : []),
    ],
    entries: theirs.length,
    shots: gone.length,
  };
}

function columnOf(table: Table, schema: Schema, key: string): number {
  const heading = schema.columns.find((column) => column.key === key)!.heading;
  return table.headings.findIndex((one) => headingKey(one) === headingKey(heading));
}
