import type { Session } from "../fitting/session.ts";
import { METRICS } from "../shots/metrics.ts";
import { stableHash } from "./stable-hash.ts";

/** With fewer figures than this two sessions might well have the same ones. */
const TELLING = 12;

/**
 * The name of a session in the ledger, made from what was measured: its figures shot by shot and the times they were
 * hit. What people say about it (player, date, place, names of builds, ticks) may be put right later without making
 * it another session, so none of that goes in. Only where there are so few figures that another session could have the
 * same do player and date count too.
 */
export function sessionId({ table, player, date }: Session): string {
  const columns = METRICS.flatMap(({ key }) => {
    const values = table.values.get(key);
    return values ? [{ key, values }] : [];
  });
  const parts: string[] = [];
  let figures = 0;
  for (let shot = 0; shot < table.size; shot++) {
    for (const { key, values } of columns) {
      if (Number.isNaN(values[shot]!)) continue;
      parts.push(`${key}=${values[shot]}`);
      figures++;
    }
    parts.push(table.time[shot] ?? "");
  }
  if (figures < TELLING) parts.push(player.trim().toLowerCase(), date);
  return stableHash(parts.join("\n"));
}
