import type { Row, Table } from "./cell.ts";
import { LEDGER } from "./schema.ts";
import { buildKey } from "./sessions-of.ts";
import { rowsOf } from "./table-rows.ts";

/**
 * Rows of a session that is kept again, named as the ledger names them already, so that what people typed beside a build
 * stays beside that build though others before it were merged or came in between. A build is known by its name; one that
 * was renamed by its place, as long as there are not fewer builds than before, for then places have moved. What is neither
 * gets a name that no row of the session has had.
 */
export function knownEntries(rows: readonly Row[], table: Table, session: string): Row[] {
  const standing = rowsOf(table, LEDGER).filter(({ entry }) => String(entry ?? "").startsWith(`${session}-`));
  const byBuild = new Map(standing.map((row) => [buildKey(row), String(row.entry)] as const).reverse());
  const taken = new Set<string>();
  const claim = (entry: string | undefined) => {
    if (entry === undefined || taken.has(entry)) return null;
    taken.add(entry);
    return entry;
  };
  const named = rows.map((row) => claim(byBuild.get(buildKey(row))));
  const moved = rows.length < standing.length;
  const had = new Set(standing.map(({ entry }) => String(entry)));
  let next = rows.length;
  const fresh = () => {
    do next++;
    while (taken.has(`${session}-${next}`) || had.has(`${session}-${next}`));
    return claim(`${session}-${next}`);
  };
  const inPlace = (row: Row) => (moved ? null : claim(String(row.entry)));
  return rows.map((row, i) => ({ ...row, entry: named[i] ?? inPlace(row) ?? fresh() }));
}
