import { buildNames, type Session } from "../fitting/session.ts";
import type { ShotTable } from "../shots/shot-table.ts";
import { count } from "./count.ts";
import type { Derived } from "./derive.ts";

/** What was understood, in a few words: "24 shots, 3 builds, 2 to look at". */
export function readingBrief(table: ShotTable): string {
  const parts = [count(table.size, "shot"), count(buildNames(table).length, "build")];
  if (table.problems.length > 0) parts.push(`${table.problems.length} to look at`);
  return parts.join(", ");
}

/** Who plays and what the rest is held against. */
export function playerBrief({ player, baseline }: Session): string {
  return [player, baseline && `baseline ${baseline}`].filter(Boolean).join(", ");
}

/** How many shots count, and how many of those lie far from the rest. */
export function shotsBrief({ session, far }: Derived): string {
  const { table } = session;
  const counted = table.keep.filter(Boolean).length;
  const doubts = new Set(far.map(({ index }) => index).filter((index) => table.keep[index])).size;
  return `${counted} of ${table.size} counted${doubts > 0 ? `, ${doubts} far from the rest` : ""}`;
}
