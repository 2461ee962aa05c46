import { textIn } from "./cell.ts";
import { buildKey, type LedgerSession } from "./sessions-of.ts";

/** A build that is tried and never chosen. */
export interface NeverWon {
  readonly build: string;
  readonly sessions: number;
  /** How likely that is for a build that is as good as those beside it. */
  readonly chance: number;
}

/** A build tried less often may just not have had its day. */
const TRIED = 3;

/**
 * Builds that were tried in at least three sessions that chose a build, and never were the one; the least likely first.
 * The chance is the product of (1 - 1 / builds in the session) over its sessions.
 */
export function neverWon(sessions: readonly LedgerSession[]): NeverWon[] {
  const tried = new Map<string, { build: string; sessions: number; wins: number; log: number }>();
  for (const { rows, chosen } of sessions) {
    const keys = new Map(rows.map((row) => [buildKey(row), textIn(row, "build")]));
    if (chosen === "" || keys.size < 2) continue;
    for (const [key, build] of keys) {
      const own = tried.get(key) ?? { build, sessions: 0, wins: 0, log: 0 };
      own.sessions++;
      own.log += Math.log1p(-1 / keys.size);
      if (key === chosen) own.wins++;
      tried.set(key, own);
    }
  }
  return [...tried.values()]
    .filter(({ sessions: count, wins }) => wins === 0 && count >= TRIED)
    .map(({ build, sessions: count, log }) => ({ build, sessions: count, chance: Math.exp(log) }))
    .sort((a, b) => a.chance - b.chance);
}
