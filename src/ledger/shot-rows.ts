import type { Session } from "../fitting/session.ts";
import { METRICS } from "../shots/metrics.ts";
import type { Row } from "./cell.ts";
import { sessionId } from "./session-id.ts";

/**
 * A session's shots for the archive, in the order they were hit. Only metrics that the table has. `id` is the name that
 * the ledger has for the session since it was first kept.
 */
export function shotRows(session: Session, id: string = sessionId(session)): Row[] {
  const { table } = session;
  const columns = METRICS.flatMap(({ key }) => {
    const values = table.values.get(key);
    return values ? [{ key, values }] : [];
  });
  return Array.from({ length: table.size }, (_, shot) => {
    const figures = columns.map(({ key, values }) => [key, orNull(values[shot]!)] as const);
    return {
      shotKey: `${id}-${shot + 1}`,
      session: id,
      build: table.build[shot]!,
      keep: table.keep[shot]!,
      time: table.time[shot] || null,
      ...Object.fromEntries(figures),
    };
  });
}

const orNull = (value: number) => (Number.isNaN(value) ? null : value);
