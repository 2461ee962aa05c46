import { buildNames } from "../fitting/session.ts";
import type { ShotTable } from "../shots/shot-table.ts";
import { count } from "./count.ts";

/** What was understood, in a few words: "24 shots, 3 builds, 2 to look at". */
export function readingBrief(table: ShotTable): string {
  const parts = [count(table.size, "shot"), count(buildNames(table).length, "build")];
  if (table.problems.length > 0) parts.push(`${table.problems.length} to look at`);
  return parts.join(", ");
}
