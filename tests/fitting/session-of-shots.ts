import { type Session, type SessionFacts, sessionOf } from "../../src/fitting/session.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

/** A session from carries, and offlines where given, build by build; hit in turn. */
export function sessionOfShots(
  builds: Readonly<Record<string, readonly (number | readonly [carry: number, offline: number])[]>>,
  facts: SessionFacts = {},
): Session {
  const rows: string[] = [];
  const longest = Math.max(...Object.values(builds).map((shots) => shots.length));
  for (let i = 0; i < longest; i++) {
    for (const [name, shots] of Object.entries(builds)) {
      const shot = shots[i];
      if (shot === undefined) continue;
      const [carry, offline] = typeof shot === "number" ? [shot, ""] : shot;
      rows.push(`${name}\t${carry}\t${offline}`);
    }
  }
  const table = readShots(["Build\tCarry (yd)\tOffline (yd)", ...rows].join("\n")) as ShotTable;
  return sessionOf(table, facts);
}
